namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>Which way a fabric runs on a cushion.</summary>
public enum Grain
{
    /// <summary>The length of the bolt runs from the front of the cushion to its back; the fabric's width limits the cushion's
    /// width.</summary>
    UpTheBolt,

    /// <summary>The length of the bolt runs along the width of the cushion; the fabric's width limits the cushion's depth.</summary>
    Railroaded,

    /// <summary>Up the bolt or railroaded, whichever sells shorter.</summary>
    Either,
}
