namespace CushionService.Engine.Messages;

/// <summary>What has a name that answers carry, and words for it that people read.</summary>
public interface INamed
{
    /// <summary>Whether what the caller gave is part of it, so that English, too, reads the words.</summary>
    bool HasGiven => false;

    /// <summary>The words for it. In English the name itself is read, unless part of it was given.</summary>
    Message ToMessage();
}
