namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Which way channels run.</summary>
public enum ChannelDirection
{
    /// <summary>From front to back.</summary>
    Lengthwise,

    /// <summary>From side to side.</summary>
    Across,
}
