using System.Collections.Frozen;
using CushionService.Engine.Specifications;
using Grpc.Core;

namespace CushionService.Contract;

/// <summary>What a violation's code means to either door: an HTTP status and a gRPC status.</summary>
internal static class Statuses
{
    private static readonly (int Http, StatusCode Grpc) BrokenRule = (StatusCodes.Status422UnprocessableEntity, StatusCode.InvalidArgument);

    private static readonly FrozenDictionary<string, (int Http, StatusCode Grpc)> Others = new Dictionary<string, (int, StatusCode)>
    {
        ["not-json"] = (StatusCodes.Status400BadRequest, StatusCode.InvalidArgument),
        ["bad-encoding"] = (StatusCodes.Status400BadRequest, StatusCode.InvalidArgument),
        ["too-deep"] = (StatusCodes.Status400BadRequest, StatusCode.InvalidArgument),
        ["wrong-type"] = (StatusCodes.Status400BadRequest, StatusCode.InvalidArgument),
        ["order-too-long"] = (StatusCodes.Status413PayloadTooLarge, StatusCode.ResourceExhausted),
        ["not-allowed"] = (StatusCodes.Status403Forbidden, StatusCode.PermissionDenied),
        ["busy"] = (StatusCodes.Status503ServiceUnavailable, StatusCode.Unavailable),
        ["too-slow"] = (StatusCodes.Status422UnprocessableEntity, StatusCode.DeadlineExceeded),
        ["internal"] = (StatusCodes.Status500InternalServerError, StatusCode.Internal),
    }.ToFrozenDictionary();

    /// <summary>The statuses of one code; those of a broken rule for every code that is not named here.</summary>
    public static (int Http, StatusCode Grpc) Of(string code) => Others.GetValueOrDefault(code, BrokenRule);

    /// <summary>Whether a code says that the order could not be read at all.</summary>
    public static bool IsUnreadable(string code) => Of(code).Http == StatusCodes.Status400BadRequest;

    /// <summary>The statuses of a refusal: those of its gravest violation.</summary>
    public static (int Http, StatusCode Grpc) Of(Refusal refusal)
    {
        foreach (Violation violation in refusal.Violations)
        {
            if (Others.TryGetValue(violation.Code, out (int, StatusCode) grave))
            {
                return grave;
            }
        }

        return BrokenRule;
    }

    /// <summary>A stable word for the kind of refusal.</summary>
    public static string Kind(Refusal refusal) =>
        refusal.Violations.FirstOrDefault(violation => violation.Code is "too-slow" or "busy")?.Code
        ?? Of(refusal).Http switch
        {
            StatusCodes.Status400BadRequest => "unreadable-order",
            StatusCodes.Status403Forbidden => "forbidden",
            StatusCodes.Status413PayloadTooLarge => "order-too-long",
            StatusCodes.Status500InternalServerError => "internal",
            _ => "invalid-order",
        };

    /// <summary>The sentence that heads a refusal.</summary>
    public static string Title(Refusal refusal) =>
        refusal.Violations.Count == 1 ? "The order has 1 problem." : $"The order has {refusal.Violations.Count} problems.";
}
