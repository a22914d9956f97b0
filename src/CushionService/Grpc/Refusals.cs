using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;
using CushionService.Grpc.Mapping;
using CushionService.Grpc.V1;
using CushionService.Languages;
using CushionService.Wording;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;
using Refusal = CushionService.Contract.Refusal;

namespace CushionService.Grpc;

/// <summary>Writes why an order gets no answer as a <c>google.rpc.Status</c>. Its details have the violations twice: as
/// <c>BadRequest</c>, which every client of gRPC knows, and as our own list with ranges.</summary>
internal static class Refusals
{
    // In bytes. Details are sent in a trailer, and clients accept some 64 KiB of trailers; in base 64 this budget is 43
    // KiB.
    private const int DetailBudget = 32 * 1024;

    /// <summary>The exception that ends a call with a refusal. As many violations are listed as a trailer can carry;
    /// the message says so when some are left out.</summary>
    /// <param name="refusal">Why the order gets no answer.</param>
    /// <param name="context">The call, for its trace.</param>
    public static RpcException ToException(Refusal refusal, ServerCallContext context)
    {
        BadRequest fields = new();
        ViolationList list = new();
        int size = 0;
        foreach (ViolationAnswer violation in ViolationWording.Of(refusal, ReaderLanguage.Of(context.GetHttpContext())))
        {
            BadRequest.Types.FieldViolation field = new()
            {
                Field = violation.Pointer,
                Reason = violation.Code,
                Description = violation.Detail,
            };
            V1.Violation message = MessageWriter<ViolationAnswer, V1.Violation>.Write(violation, "");
            size += field.CalculateSize() + message.CalculateSize();
            if (size > DetailBudget)
            {
                break;
            }

            fields.FieldViolations.Add(field);
            list.Violations.Add(message);
        }

        // Validate answers with a message, which has room for all of them.
        Message title =
            list.Violations.Count < refusal.Violations.Count
                ? RefusalTexts.ProblemsFirstListed(refusal.Violations.Count, list.Violations.Count)
                : Statuses.Title(refusal);
        Google.Rpc.Status status = new()
        {
            Code = (int)Statuses.Of(refusal).Grpc,
            Message = CallErrors.Text(title, context),
            Details =
            {
                Any.Pack(fields),
                Any.Pack(list),
                Any.Pack(CallErrors.Trace(context)),
                Any.Pack(new ErrorInfo { Reason = Statuses.Kind(refusal), Domain = "cushionservice" }),
            },
        };
        if (refusal.RetryAfterSeconds is { } seconds)
        {
            status.Details.Add(Any.Pack(new RetryInfo { RetryDelay = Duration.FromTimeSpan(TimeSpan.FromSeconds(seconds)) }));
        }

        return status.ToRpcException();
    }
}
