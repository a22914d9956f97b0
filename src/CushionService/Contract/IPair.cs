namespace CushionService.Contract;

/// <summary>Two coordinates, which JSON writes as a list of two.</summary>
internal interface IPair<out TPair, TCoordinate>
{
    /// <summary>From left to right.</summary>
    TCoordinate X { get; }

    /// <summary>From front to back, or along the fabric.</summary>
    TCoordinate Y { get; }

    /// <summary>Pairs two coordinates.</summary>
    static abstract TPair Of(TCoordinate x, TCoordinate y);
}
