using CushionService.Contract;
using CushionService.Engine.Messages;
using CushionService.Rejections;

namespace CushionService.Rest;

/// <summary>A code as programs read it.</summary>
/// <param name="Code">The code.</param>
/// <param name="Type">Its address, relative to the service: the <c>type</c> of a problem.</param>
/// <param name="Uses">Where it is met: violation, warning, caution, problem.</param>
/// <param name="Status">The HTTP status; null for what does not end a call.</param>
/// <param name="GrpcStatus">The gRPC status; null for what does not end a call.</param>
/// <param name="MaySendAgain">Whether the same call may be sent again, and may be answered then.</param>
/// <param name="Meaning">What it says, and what to do.</param>
internal sealed record CodeEntry(
    string Code,
    string Type,
    IReadOnlyList<string> Uses,
    int? Status,
    string? GrpcStatus,
    bool MaySendAgain,
    string Meaning
)
{
    /// <summary>The entry of a code.</summary>
    /// <param name="code">The code.</param>
    /// <param name="words">Writes its meaning.</param>
    public static CodeEntry Of(Code code, MessageWriter words) =>
        new(
            code.Name,
            ProblemAddress.Of(code.Name),
            [.. Enum.GetValues<CodeUse>().Where(use => code.Uses.HasFlag(use)).Select(use => use.ToString().ToLowerInvariant())],
            code.Http,
            code.GrpcName,
            code.MaySendAgain,
            words.Text(code.Meaning)
        );
}
