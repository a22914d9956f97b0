namespace CushionService.Contract.Answers;

/// <summary>What a field of an order holds.</summary>
public enum FieldType
{
    /// <summary>A number in the order's units, or text with a fraction or a unit.</summary>
    Length,

    /// <summary>A number.</summary>
    Number,

    /// <summary>Text.</summary>
    Text,

    /// <summary>One of a set of words.</summary>
    Choice,

    /// <summary>True or false.</summary>
    Switch,

    /// <summary>A list of groups.</summary>
    List,

    /// <summary>Fields of its own.</summary>
    Group,
}
