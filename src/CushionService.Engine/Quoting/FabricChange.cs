namespace CushionService.Engine.Quoting;

/// <summary>A change to an order that may make its fabric enough, the smallest first.</summary>
public enum FabricChange
{
    /// <summary>Welt that is cut on the bias is cut straight across.</summary>
    StraightWelt,

    /// <summary>Faces and boxing are not matched to the repeat.</summary>
    Unmatched,

    /// <summary>Faces may be joined from several panels.</summary>
    AllowJoins,

    /// <summary>The fabric runs along the cushions' width.</summary>
    Railroaded,

    /// <summary>The fabric runs from front to back.</summary>
    UpTheBolt,

    /// <summary>The undersides are made of another fabric, which is bought.</summary>
    PlainUnderside,
}
