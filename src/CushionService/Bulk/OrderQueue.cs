using Microsoft.Extensions.Options;
using NATS.Client.Core;
using NATS.Client.JetStream;
using NATS.Client.JetStream.Models;
using NATS.Net;

namespace CushionService.Bulk;

/// <summary>The connection to the server that has the queue of orders (NATS JetStream), and its streams.</summary>
internal sealed class OrderQueue : IAsyncDisposable
{
    private readonly WorkerOptions _options;
    private readonly NatsConnection _connection;

    /// <summary>Prepares the connection; it is opened with the first use, and again whenever it is lost.</summary>
    /// <param name="options">The server, and whether its streams are made here.</param>
    public OrderQueue(IOptions<WorkerOptions> options)
    {
        _options = options.Value;
        _connection = new NatsConnection(
            new NatsOpts
            {
                Url = _options.Url,
                Name = "cushionservice",
                MaxReconnectRetry = -1,
                ReconnectWaitMin = TimeSpan.FromMilliseconds(200),
                ReconnectWaitMax = TimeSpan.FromSeconds(10),
                AuthOpts = _options.Credentials is { } file ? new NatsAuthOpts { CredsFile = file } : NatsAuthOpts.Default,
            }
        );
        Stream = _connection.CreateJetStreamContext();
    }

    /// <summary>Publishes and consumes.</summary>
    public INatsJSContext Stream { get; }

    /// <summary>Whether the server can be reached now.</summary>
    public bool IsOpen => _connection.ConnectionState == NatsConnectionState.Open;

    /// <summary>The bytes that a message may have at most, with its headers.</summary>
    public int MostBytes => _connection.ServerInfo?.MaxPayload ?? 1 << 20;

    /// <summary>Opens the connection, and makes the streams that are not there.</summary>
    /// <param name="cancellation">Ends the attempt.</param>
    /// <exception cref="NatsException">The server cannot be reached, or refuses the streams.</exception>
    public async Task OpenAsync(CancellationToken cancellation)
    {
        await _connection.ConnectAsync();
        if (_options.CreateStreams)
        {
            await EnsureAsync(OrderSubjects.OrderStream, OrderSubjects.Orders, StreamConfigRetention.Workqueue, cancellation);
            await EnsureAsync(OrderSubjects.AnswerStream, OrderSubjects.Answers, StreamConfigRetention.Limits, cancellation);
            await EnsureAsync(OrderSubjects.DeadStream, OrderSubjects.Dead, StreamConfigRetention.Limits, cancellation);
        }
    }

    /// <summary>The consumer that all workers share, made where it is not there.</summary>
    /// <param name="cancellation">Ends the attempt.</param>
    /// <returns>Durable, and the same for all workers: the server gives each order to one of them.</returns>
    public async Task<INatsJSConsumer> ConsumerAsync(CancellationToken cancellation)
    {
        await OpenAsync(cancellation);
        return _options.CreateStreams
            ? await Stream.CreateOrUpdateConsumerAsync(
                OrderSubjects.OrderStream,
                new ConsumerConfig(OrderSubjects.Consumer)
                {
                    FilterSubject = OrderSubjects.Orders,
                    AckPolicy = ConsumerConfigAckPolicy.Explicit,
                    AckWait = _options.AckWait,
                    MaxAckPending = 10_000,
                },
                cancellation
            )
            : await Stream.GetConsumerAsync(OrderSubjects.OrderStream, OrderSubjects.Consumer, cancellation);
    }

    /// <summary>Closes the connection.</summary>
    public ValueTask DisposeAsync() => _connection.DisposeAsync();

    // What an operator has made with other limits stays as it is.
    private async Task EnsureAsync(string name, string subject, StreamConfigRetention retention, CancellationToken cancellation)
    {
        try
        {
            await Stream.GetStreamAsync(name, cancellationToken: cancellation);
        }
        catch (NatsJSApiException exception) when (exception.Error.Code == StatusCodes.Status404NotFound)
        {
            StreamConfig stream = new(name, [subject])
            {
                Retention = retention,
                Storage = StreamConfigStorage.File,
                DuplicateWindow = TimeSpan.FromMinutes(_options.DuplicateMinutes),
            };
            await Stream.CreateOrUpdateStreamAsync(stream, cancellation);
        }
    }
}
