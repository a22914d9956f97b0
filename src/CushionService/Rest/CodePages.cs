using System.Net;
using System.Text;
using System.Text.Json;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Rejections;
using CushionService.Rest.Pages;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>What each code means, at the address that a problem has as its <c>type</c>; in JSON for programs, and in HTML for
/// people.</summary>
internal static class CodePages
{
    private const string Json = "application/json";
    private const string Html = "text/html";

    // Kept for an hour: codes are added with a release, under the same path.
    private const string Caching = "public, max-age=3600";

    private static readonly MessageWriter Words = new(Language.English, LengthUnit.Inch);

    /// <summary>Serves a page for each code, and one that lists them all.</summary>
    public static void MapCodes(this WebApplication app)
    {
        string rows = string.Concat(
            CodeRegister.All.Select(code => $"<dt><a href=\"problems/{code.Name}\">{code.Name}</a></dt>\n<dd>{Text(code.Meaning)}</dd>\n")
        );
        app.Map(ProblemAddress.Path, CodeRegister.All.Select(CodeEntry.Of), CodePageTexts.Title, $"<dl>\n{rows}</dl>");
        foreach (Code code in CodeRegister.All)
        {
            app.Map($"{ProblemAddress.Path}/{code.Name}", CodeEntry.Of(code), null, Body(code), code.Name);
        }
    }

    private static void Map<T>(this WebApplication app, string path, T entry, Message? title, string body, string name = "")
    {
        string heading = title is null ? name : Words.Text(title);
        FixedAnswer json = new(
            JsonSerializer.SerializeToUtf8Bytes(entry, JsonSerializerOptions.Web),
            "application/json; charset=utf-8",
            Caching
        );
        FixedAnswer html = new(
            Encoding.UTF8.GetBytes(PageFrame.Of(heading, $"<h1>{WebUtility.HtmlEncode(heading)}</h1>\n{body}")),
            "text/html; charset=utf-8",
            Caching
        );
        app.MapMethods(
                path,
                FixedRoutes.Methods,
                (HttpContext http) =>
                {
                    http.Response.Headers.AppendCommaSeparatedValues(HeaderNames.Vary, HeaderNames.Accept);
                    return AcceptHeader.Choose(http.Request.Headers.Accept, [Json, Html]) switch
                    {
                        0 => json.WriteAsync(http),
                        1 => html.WriteAsync(http),
                        _ => Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable),
                    };
                }
            )
            .ExcludeFromDescription();
    }

    private static string Body(Code code)
    {
        List<Message> lines = [code.Meaning];
        lines.AddRange(
            new (CodeUse Use, Message Says)[]
            {
                (CodeUse.Violation, CodePageTexts.AsViolation),
                (CodeUse.Warning, CodePageTexts.AsWarning),
                (CodeUse.Caution, CodePageTexts.AsCaution),
                (CodeUse.Problem, CodePageTexts.AsProblem),
            }
                .Where(use => code.Uses.HasFlag(use.Use))
                .Select(use => use.Says)
        );
        if (code is { Http: { } http, GrpcName: { } grpc })
        {
            lines.Add(CodePageTexts.Statuses(http, grpc));
            lines.Add(code.MaySendAgain ? CodePageTexts.SendAgain : CodePageTexts.ChangeFirst);
        }

        string all = $"<p><a href=\"../problems\">{Text(CodePageTexts.All)}</a></p>";
        return string.Concat(lines.Select(line => $"<p>{Text(line)}</p>\n")) + all;
    }

    private static string Text(Message message) => WebUtility.HtmlEncode(Words.Text(message));
}
