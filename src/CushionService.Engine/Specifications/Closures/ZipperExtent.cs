namespace CushionService.Engine.Specifications.Closures;

/// <summary>How many sides a zipper in a boxing runs along.</summary>
public enum ZipperExtent
{
    /// <summary>Along one side, with its returns.</summary>
    OneSide,

    /// <summary>Along a side and the whole of both its neighbours.</summary>
    ThreeSides,
}
