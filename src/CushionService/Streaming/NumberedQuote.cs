using CushionService.Contract;
using CushionService.Contract.Answers;

namespace CushionService.Streaming;

/// <summary>What a stream answers to one order.</summary>
/// <param name="Number">The number of the order that it answers.</param>
/// <param name="Outcome">The quote, or why there is none.</param>
internal readonly record struct NumberedQuote(long Number, Outcome<QuoteAnswer> Outcome)
{
    /// <summary>The fields of the quote that are asked for; null for all.</summary>
    public FieldTree? Fields { get; init; }
}
