namespace CushionService.Engine.Instructions;

/// <summary>How a fabric is made ready, and pressed later.</summary>
internal enum FabricCare
{
    /// <summary>Pressed with an iron.</summary>
    Press,

    /// <summary>Washed before it is cut, for it shrinks.</summary>
    Wash,

    /// <summary>Washed, and steamed from the back, for it has a pile.</summary>
    WashPile,

    /// <summary>Steamed from the back, for it has a pile.</summary>
    Steam,

    /// <summary>Rolled flat: an iron melts its coating.</summary>
    Roll,
}
