using CushionService.Intake;
using CushionService.Nesting;

namespace CushionService.Desk;

/// <summary>What an order is sent for: the rules it must keep, and how a checked order is answered.</summary>
/// <remarks>A new call needs a new purpose and a route: the desk, the queue, REST and gRPC take every purpose the same
/// way.</remarks>
/// <typeparam name="TAnswer">The record of the contract that answers.</typeparam>
/// <param name="Rules">Which of the fields that have a meaning in one call only are allowed, and which are
/// required.</param>
/// <param name="Answer">Makes the answer, on a worker thread. This is the only delegate between a call and the engine.
/// It gets an order without violations, unless <paramref name="AnswersUnsound"/> is set.</param>
/// <param name="AnswersUnsound">Whether an order that breaks rules is answered too. A validation reports the violations
/// in its answer; every other purpose is refused with them.</param>
internal sealed record Purpose<TAnswer>(Purpose Rules, Func<CheckedOrder, CancellationToken, TAnswer> Answer, bool AnswersUnsound = false)
    where TAnswer : class
{
    /// <summary>The effort of an order that names none; null where nothing is laid out, so that its effort does not matter.</summary>
    public Effort? UsualEffort { get; init; } = Effort.Standard;
}
