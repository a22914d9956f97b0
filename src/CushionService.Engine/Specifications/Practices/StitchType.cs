namespace CushionService.Engine.Specifications.Practices;

/// <summary>A machine stitch; its number is that of ISO 4915.</summary>
public enum StitchType
{
    /// <summary>ISO 4915 type 101: single-thread chainstitch.</summary>
    Chainstitch = 101,

    /// <summary>ISO 4915 type 301: the ordinary lockstitch.</summary>
    Lockstitch = 301,

    /// <summary>ISO 4915 type 401: double-locked chainstitch.</summary>
    DoubleChainstitch = 401,

    /// <summary>ISO 4915 type 504: three-thread overedge.</summary>
    Overedge = 504,

    /// <summary>ISO 4915 type 515: safety stitch, a double-locked chainstitch beside an overedge (401 and 504).</summary>
    SafetyStitch = 515,
}
