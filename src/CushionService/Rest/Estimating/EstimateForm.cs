using System.Net;
using System.Text;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Rest.Pages;
using CushionService.Wording;
using Microsoft.Extensions.Primitives;

namespace CushionService.Rest.Estimating;

/// <summary>The estimate as a page that needs no script: a form of the same parameters, with the answer or what is wrong under it. For
/// readers without scripts, and for search engines.</summary>
/// <param name="language">The language of its words.</param>
internal sealed class EstimateForm(Language language)
{
    private const string Path = "/v1/estimate",
        Cushion = "/cushions/*/",
        Outline = "outline/";

    // What depends on the shape; the rest is always asked for.
    private static readonly string[] Sizes = ["width", "depth", "diameter", "length", "thickness"];

    // The one measure that a construction needs beside the size.
    private const string Flange = "flange",
        FlangeWidth = "flangeWidth";

    private readonly PageWords _words = PageWords.In(language);

    /// <summary>What was filled in: without what was left empty, and without the sizes that the shape does not have.</summary>
    /// <param name="query">The parameters.</param>
    public static Dictionary<string, StringValues> Filled(IEnumerable<KeyValuePair<string, StringValues>> query)
    {
        Dictionary<string, StringValues> filled = query.Where(parameter => !StringValues.IsNullOrEmpty(parameter.Value)).ToDictionary();
        CatalogueAnswer catalogue = CatalogueWording.In(Language.English);
        ConstructionAnswer? construction = catalogue.Constructions.FirstOrDefault(each =>
            Word(each.Kind) == filled.GetValueOrDefault("construction")
        );
        OutlineAnswer? outline = catalogue.Outlines.FirstOrDefault(each => Word(each.Kind) == filled.GetValueOrDefault("outline"));
        if (construction is not null && outline is not null)
        {
            HashSet<string> needed =
            [
                .. outline.Fields.Select(field => field.Pointer[(Cushion.Length + Outline.Length)..]),
                .. construction.Fields.Select(field => field.Pointer[Cushion.Length..]),
                .. construction.Thickness ? ["thickness"] : (string[])[],
            ];
            // A form sends every field that it shows; a size that the chosen shape lacks would be refused as one that
            // does not apply.
            foreach (string size in Sizes.Where(size => !needed.Contains(size)))
            {
                filled.Remove(size);
            }

            if (!needed.Contains(Flange))
            {
                filled.Remove(FlangeWidth);
            }
        }

        return filled;
    }

    /// <summary>The page.</summary>
    /// <param name="given">What was filled in.</param>
    /// <param name="answer">The answer; null for none.</param>
    /// <param name="violations">What is wrong; the pointers name the parameters.</param>
    public string Page(IReadOnlyDictionary<string, StringValues> given, EstimateAnswer? answer, IReadOnlyList<ViolationAnswer> violations)
    {
        CatalogueAnswer catalogue = CatalogueWording.In(Language.English);
        StringBuilder html = new();
        html.Append($"<section aria-label=\"{Text("estimate.title")}\"><h1>{Text("estimate.title")}</h1>")
            .Append($"<p class=\"lead\">{Text("estimate.lead")}</p>")
            .Append(
                $"<form class=\"plain\" method=\"get\" action=\"{Path}\"><input type=\"hidden\" name=\"language\" value=\"{_words.Tag}\">"
            );
        Choice(html, "units", "estimate.units", ["in", "cm", "mm"], given, language == Language.English ? "in" : "cm", unit => unit);
        Choice(html, "construction", ".construction", catalogue.Constructions.Select(each => Word(each.Kind)), given, "boxed", Named);
        string[] outlines =
        [
            .. catalogue
                .Outlines.Where(outline => outline.Fields.All(field => !field.Required || IsAskedFor(field.Pointer)))
                .Select(outline => Word(outline.Kind)),
        ];
        Choice(html, "outline", ".outline", outlines, given, "rectangle", Named);
        foreach (string size in Sizes)
        {
            Field(html, size, "." + size, given, violations);
        }

        Field(html, FlangeWidth, "estimate.flangeWidth", given, violations);
        Field(html, "quantity", ".quantity", given, violations);
        Field(html, "fabricWidth", "estimate.fabricWidth", given, violations);
        html.Append($"<p><button>{Text("estimate.ask")}</button></p></form>");
        Answer(html, answer, violations);
        return SitePages.Framed(Path, _words["estimate.title"], html.Append("</section>").ToString(), language);
    }

    private static bool IsAskedFor(string pointer) => Sizes.Contains(pointer[(Cushion.Length + Outline.Length)..]);

    private void Answer(StringBuilder html, EstimateAnswer? answer, IReadOnlyList<ViolationAnswer> violations)
    {
        if (violations.Count > 0)
        {
            html.Append($"<div role=\"alert\"><p>{Text("estimate.wrong")}</p><ul>");
            foreach (ViolationAnswer violation in violations)
            {
                string name = violation.Pointer.TrimStart('/');
                string detail = WebUtility.HtmlEncode(violation.Detail);
                html.Append(name.Length > 0 ? $"<li><a href=\"#{WebUtility.HtmlEncode(name)}\">{detail}</a></li>" : $"<li>{detail}</li>");
            }

            html.Append("</ul></div>");
        }
        else if (answer is not null)
        {
            MessageWriter writer = new(language, LengthUnit.Inch);
            string quantity = writer.Text(EstimateTexts.Sold(SaleAmount.Of((decimal)answer.SoldLength, answer.SoldUnit)));
            string said = Text("estimate.answer").Replace("{quantity}", quantity, StringComparison.Ordinal);
            html.Append($"<p class=\"amount\" role=\"status\">{said}</p>").Append($"<p>{WebUtility.HtmlEncode(answer.Because)}.</p>");
            foreach (ViolationAnswer warning in answer.Warnings)
            {
                html.Append($"<p>{WebUtility.HtmlEncode(warning.Detail)}</p>");
            }
        }
    }

    private void Choice(
        StringBuilder html,
        string name,
        string label,
        IEnumerable<string> values,
        IReadOnlyDictionary<string, StringValues> given,
        string usual,
        Func<string, string> named
    )
    {
        string chosen = given.GetValueOrDefault(name, usual).ToString();
        html.Append($"<p><label for=\"{name}\">{Text(label)}</label> <select id=\"{name}\" name=\"{name}\">");
        foreach (string value in values)
        {
            string selected = value == chosen ? " selected" : "";
            html.Append($"<option value=\"{value}\"{selected}>{WebUtility.HtmlEncode(named(value))}</option>");
        }

        html.Append("</select></p>");
    }

    private void Field(
        StringBuilder html,
        string name,
        string label,
        IReadOnlyDictionary<string, StringValues> given,
        IReadOnlyList<ViolationAnswer> violations
    )
    {
        string wrong = violations.Any(violation => violation.Pointer == "/" + name) ? " aria-invalid=\"true\"" : "";
        string value = WebUtility.HtmlEncode(given.GetValueOrDefault(name).ToString());
        html.Append($"<p><label for=\"{name}\">{Text(label)}</label> <input id=\"{name}\" name=\"{name}\" value=\"{value}\"{wrong}></p>");
    }

    private static string Word<T>(T value)
        where T : struct, Enum => Words<T>.Of(value);

    private string Named(string word) => _words["=" + word];

    private string Text(string key) => WebUtility.HtmlEncode(_words[key]);
}
