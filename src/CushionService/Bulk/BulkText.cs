using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;
using CushionService.Json;
using CushionService.Rejections;

namespace CushionService.Bulk;

/// <summary>Writes what became of an order as REST writes it: a quote, or a problem.</summary>
internal static class BulkText
{
    /// <summary>The media type of a quote.</summary>
    public const string Json = "application/json";

    private static readonly JsonTypeInfo<QuoteAnswer> QuoteType =
        (JsonTypeInfo<QuoteAnswer>)ContractJson.Options.GetTypeInfo(typeof(QuoteAnswer));

    private static readonly JsonTypeInfo<Problem> ProblemType = (JsonTypeInfo<Problem>)ContractJson.Options.GetTypeInfo(typeof(Problem));

    /// <summary>The bytes of an answer, in UTF-8, without a line break.</summary>
    /// <param name="outcome">The quote, or why there is none.</param>
    /// <param name="language">The reader's language.</param>
    /// <param name="traceId">Names the order in the log.</param>
    /// <param name="line">The line of the order in its file; null when it is in none.</param>
    /// <param name="site">The public address of the service, which the types of problems begin with.</param>
    public static byte[] Of(Outcome<QuoteAnswer> outcome, Language language, string traceId, long? line, string site = "") =>
        outcome.Answered
            ? JsonSerializer.SerializeToUtf8Bytes(outcome.Answer, QuoteType)
            : Of(Problems.Of(outcome.Refusal, language, traceId), line, site);

    /// <summary>A problem that was written elsewhere, with the line of its order.</summary>
    public static byte[] AtLine(ReadOnlySpan<byte> problem, long line) => Of(JsonSerializer.Deserialize(problem, ProblemType)!, line, "");

    private static byte[] Of(Problem problem, long? line, string site) =>
        JsonSerializer.SerializeToUtf8Bytes(problem with { Line = line, Type = site + problem.Type }, ProblemType);
}
