namespace CushionService.Engine.Messages;

/// <summary>What an argument of a message is, and so how it is written.</summary>
public enum ArgumentKind
{
    /// <summary>Absent: an optional argument that has no value.</summary>
    None,

    /// <summary>A length, in the order's unit.</summary>
    Length,

    /// <summary>A distance to a mark, in the order's unit, to a finer mark of the tape.</summary>
    Mark,

    /// <summary>A length as it comes off a roll or a spool: in yards or metres.</summary>
    Run,

    /// <summary>An area, in squares of the order's unit.</summary>
    Area,

    /// <summary>A volume, in cubic feet or litres.</summary>
    Volume,

    /// <summary>A mass, in pounds or kilograms.</summary>
    Mass,

    /// <summary>A force, in pounds of force or newtons.</summary>
    Force,

    /// <summary>An amount of money, without its currency.</summary>
    Money,

    /// <summary>An amount in a unit of sale.</summary>
    Sale,

    /// <summary>A share, in hundredths.</summary>
    Percent,

    /// <summary>A number with at most four decimals.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Yes or no; it is selected by and never written.</summary>
    Flag,

    /// <summary>The name of a part or an edge, as the answer has it.</summary>
    Name,

    /// <summary>A word of the contract, in kebab case.</summary>
    Word,

    /// <summary>What the caller gave: an id, a word that is unknown. Written as it is.</summary>
    Id,

    /// <summary>What is bought, as prices name it; a name that is the service's own is written in the reader's language.</summary>
    Item,

    /// <summary>A field of the contract, in words.</summary>
    Field,

    /// <summary>A message within the message.</summary>
    Message,

    /// <summary>A list of such values.</summary>
    List,
}
