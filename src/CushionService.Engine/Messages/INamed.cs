namespace CushionService.Engine.Messages;

/// <summary>What has a name that answers carry, and words for it that people read.</summary>
public interface INamed
{
    /// <summary>The words for it. In English the name itself is read.</summary>
    Message ToMessage();
}
