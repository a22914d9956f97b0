using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Json;
using CushionService.Languages;
using CushionService.Rest.Estimating;
using Microsoft.Extensions.Primitives;

namespace CushionService.Rest;

/// <summary>The query of a call: what is unknown in it, or given twice, is refused in the same way by every call.</summary>
internal static class CallQuery
{
    /// <summary>The parameter that names the fields of the answer which the caller asks for.</summary>
    public const string Fields = "fields";

    // A query of two bytes a parameter must not be answered with hundreds of bytes for each.
    private const int MostViolations = 20;

    /// <summary>What is wrong with the language that a query names.</summary>
    /// <param name="query">The query.</param>
    /// <returns>Nothing where it names none: the header then decides.</returns>
    public static IEnumerable<Violation> LanguageIn(IQueryCollection query)
    {
        const string Pointer = "/" + LanguageParameterAttribute.Name;
        StringValues given = query[LanguageParameterAttribute.Name];
        if (given.Count > 1)
        {
            yield return new Violation(Pointer, "duplicate-field", EstimateTexts.ParameterTwice);
        }
        else if (given.Count == 1 && LanguageTags.Named(given[0]) is null)
        {
            yield return new Violation(Pointer, "unknown-value", FormTexts.LanguageChoices(LanguageTags.All));
        }
    }

    /// <summary>Reads the query of a call that answers with a record.</summary>
    /// <param name="query">The query.</param>
    /// <param name="answer">The record, whose fields may be asked for; null for an answer that has no fields, such as a
    /// drawing.</param>
    /// <param name="known">The call's own parameters.</param>
    /// <returns>The fields that are asked for, null for all; and what is wrong with the query.</returns>
    public static (FieldTree? Fields, IReadOnlyList<Violation> Violations) Read(
        IQueryCollection query,
        JsonTypeInfo? answer,
        params ReadOnlySpan<string> known
    )
    {
        if (query.Count == 0)
        {
            return (null, []);
        }

        List<Violation> violations = [];
        FieldTree? fields = null;
        foreach ((string name, StringValues given) in query)
        {
            bool isFields = name == Fields && answer is not null;
            if (!isFields && !known.Contains(name))
            {
                Report(name, "unknown-field", name == Fields ? EstimateTexts.FieldsOfJson : EstimateTexts.UnknownParameter);
            }
            else if (given.Count != 1)
            {
                Report(name, "duplicate-field", EstimateTexts.ParameterTwice);
            }
            else if (isFields)
            {
                (fields, IReadOnlyList<Violation> unknown) = AnswerFields.Read(given.ToString(), answer!);
                violations.AddRange(unknown);
            }
        }

        return (fields, violations);

        void Report(string name, string code, Message detail)
        {
            if (violations.Count < MostViolations)
            {
                violations.Add(new Violation("/" + JsonText.Escape(name), code, detail));
            }
        }
    }
}
