namespace CushionService.LoadTests.Generating;

/// <summary>What a caller keeps of an answer.</summary>
/// <param name="Status">The HTTP status; of a gRPC call the one that its status maps to; 0 when the connection failed.</param>
/// <param name="RetryAfter">Whether it says when to call again.</param>
internal readonly record struct Reply(int Status, bool RetryAfter)
{
    /// <summary>Whether it is an answer.</summary>
    public bool Answered => Status is 200 or 304;
}
