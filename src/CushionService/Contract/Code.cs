using CushionService.Engine.Messages;
using Grpc.Core;

namespace CushionService.Contract;

/// <summary>A stable word for programs: what it says, where it is met, and what it means to REST and gRPC.</summary>
/// <param name="Name">The word, in kebab case. It never changes, and never gets another meaning.</param>
/// <param name="Uses">Where it is met.</param>
/// <param name="Meaning">What it says, and what to do.</param>
internal sealed record Code(string Name, CodeUse Uses, Message Meaning)
{
    /// <summary>The HTTP status of a call that ends with it; null for what does not end a call.</summary>
    public int? Http { get; private init; }

    /// <summary>The gRPC status of a call that ends with it; null for what does not end a call.</summary>
    public StatusCode? Grpc { get; private init; }

    /// <summary>Whether the same call may be sent again, and may be answered then.</summary>
    public bool MaySendAgain { get; private init; }

    /// <summary>The gRPC status as the protocol writes it, such as <c>INVALID_ARGUMENT</c>.</summary>
    public string? GrpcName =>
        Grpc is { } status
            ? string.Concat(status.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? $"_{c}" : $"{c}")).ToUpperInvariant()
            : null;

    /// <summary>A rule that an order breaks, which can be read.</summary>
    public static Code Rule(string name, Message meaning) =>
        Violation(name, StatusCodes.Status422UnprocessableEntity, StatusCode.InvalidArgument, meaning);

    /// <summary>A violation with statuses of its own.</summary>
    public static Code Violation(string name, int http, StatusCode grpc, Message meaning) =>
        new(name, CodeUse.Violation, meaning) { Http = http, Grpc = grpc };

    /// <summary>A violation that also names the problem.</summary>
    public static Code Either(string name, int http, StatusCode grpc, Message meaning, bool maySendAgain = false) =>
        new(name, CodeUse.Violation | CodeUse.Problem, meaning)
        {
            Http = http,
            Grpc = grpc,
            MaySendAgain = maySendAgain,
        };

    /// <summary>A problem of a call.</summary>
    public static Code Problem(string name, int http, StatusCode grpc, Message meaning, bool maySendAgain = false) =>
        Either(name, http, grpc, meaning, maySendAgain) with
        {
            Uses = CodeUse.Problem,
        };

    /// <summary>Something allowed but unwise.</summary>
    public static Code Warning(string name, Message meaning) => new(name, CodeUse.Warning, meaning);

    /// <summary>What to beware of.</summary>
    public static Code Caution(string name, Message meaning) => new(name, CodeUse.Caution, meaning);
}
