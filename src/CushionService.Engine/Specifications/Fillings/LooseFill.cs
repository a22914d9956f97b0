namespace CushionService.Engine.Specifications.Fillings;

/// <summary>A loose filling.</summary>
public enum LooseFill
{
    /// <summary>Polyester fibre.</summary>
    PolyesterFibre,

    /// <summary>Feather.</summary>
    Feather,

    /// <summary>Shredded foam.</summary>
    ShreddedFoam,
}
