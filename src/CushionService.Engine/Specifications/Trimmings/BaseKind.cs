namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>What is on the underside besides its face.</summary>
public enum BaseKind
{
    /// <summary>Nothing.</summary>
    Plain,

    /// <summary>A layer that keeps the cushion from slipping, caught in the bottom seam.</summary>
    AntiSlip,
}
