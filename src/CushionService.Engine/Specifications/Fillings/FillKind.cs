namespace CushionService.Engine.Specifications.Fillings;

/// <summary>What fills the cushion.</summary>
public enum FillKind
{
    /// <summary>A block of foam.</summary>
    Foam,

    /// <summary>Loose fill, such as polyester fibre.</summary>
    Loose,

    /// <summary>Nothing: the cover is made for a fill that exists.</summary>
    None,

    /// <summary>A ready-made form: a filled pad of a size that is bought.</summary>
    Form,
}
