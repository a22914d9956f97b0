namespace CushionService.LoadTests.Generating;

/// <summary>A connection that sends one prepared request at a time: REST's or gRPC's.</summary>
internal interface IConnection : IDisposable
{
    /// <summary>Sends a request and waits for its answer.</summary>
    ValueTask<Reply> SendAsync(byte[] request, CancellationToken cancellation);
}
