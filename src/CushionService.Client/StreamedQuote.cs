namespace CushionService.Client;

/// <summary>What became of one order of a stream: a quote, or a problem.</summary>
/// <param name="Number">The place of the order, from 1.</param>
/// <param name="Quote">The quote; null where there is none.</param>
/// <param name="Problem">Why there is no quote; null where there is one.</param>
public sealed record StreamedQuote(long Number, QuoteAnswer? Quote, Problem? Problem);
