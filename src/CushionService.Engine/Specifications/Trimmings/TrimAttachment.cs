namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>How a bought trim is fastened.</summary>
public enum TrimAttachment
{
    /// <summary>Its heading or lip is caught in the seam.</summary>
    SewnIn,

    /// <summary>Sewn by hand over the seam of the turned cover.</summary>
    SewnOn,
}
