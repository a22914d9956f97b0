using CushionService.Contract;
using CushionService.Grpc.Mapping;
using CushionService.Grpc.V1;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;
using Refusal = CushionService.Contract.Refusal;

namespace CushionService.Grpc;

/// <summary>Writes why an order gets no answer, as a google.rpc.Status.</summary>
internal static class Refusals
{
    // Details travel in a trailer, and clients take some 64 KiB of those; in base 64 this budget is 43 KiB.
    private const int DetailBudget = 32 * 1024;

    public static RpcException ToException(Refusal refusal, ServerCallContext context)
    {
        BadRequest fields = new();
        ViolationList list = new();
        int size = 0;
        foreach (Engine.Specifications.Violation violation in refusal.Violations)
        {
            BadRequest.Types.FieldViolation field = new()
            {
                Field = violation.Pointer,
                Reason = violation.Code,
                Description = violation.Detail,
            };
            V1.Violation message = MessageWriter<Engine.Specifications.Violation, V1.Violation>.Write(violation, "");
            size += field.CalculateSize() + message.CalculateSize();
            if (size > DetailBudget)
            {
                break;
            }

            fields.FieldViolations.Add(field);
            list.Violations.Add(message);
        }

        string rest =
            list.Violations.Count < refusal.Violations.Count
                ? $" The first {list.Violations.Count} are listed; Validate lists them all."
                : "";
        Google.Rpc.Status status = new()
        {
            Code = (int)Statuses.Of(refusal).Grpc,
            Message = Statuses.Title(refusal) + rest,
            Details = { Any.Pack(fields), Any.Pack(list), Any.Pack(CallErrors.Trace(context)) },
        };
        if (refusal.RetryAfterSeconds is { } seconds)
        {
            status.Details.Add(Any.Pack(new RetryInfo { RetryDelay = Duration.FromTimeSpan(TimeSpan.FromSeconds(seconds)) }));
        }

        return status.ToRpcException();
    }
}
