using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using Grpc.Core;

namespace CushionService.Contract;

/// <summary>What a violation's code means to either door: an HTTP status and a gRPC status.</summary>
internal static class Statuses
{
    private static readonly (int Http, StatusCode Grpc) BrokenRule = (StatusCodes.Status422UnprocessableEntity, StatusCode.InvalidArgument);

    /// <summary>The statuses of one code; those of a broken rule for a code that ends no call.</summary>
    public static (int Http, StatusCode Grpc) Of(string code) =>
        CodeRegister.Find(code) is { Http: { } http, Grpc: { } grpc } ? (http, grpc) : BrokenRule;

    /// <summary>Whether a code says that the order could not be read at all.</summary>
    public static bool IsUnreadable(string code) => Of(code).Http == StatusCodes.Status400BadRequest;

    /// <summary>The statuses of a refusal: those of its gravest violation.</summary>
    public static (int Http, StatusCode Grpc) Of(Refusal refusal)
    {
        foreach (Violation violation in refusal.Violations)
        {
            if (Of(violation.Code) is var grave && grave != BrokenRule)
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
    public static Message Title(Refusal refusal) => RefusalTexts.Problems(refusal.Violations.Count);
}
