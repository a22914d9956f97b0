using System.Net;
using System.Text;
using System.Text.Json;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Languages;
using CushionService.Rejections;
using CushionService.Rest.Pages;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>What each code means, at the address that a problem has as its <c>type</c>; in JSON for programs, in HTML for people, and in
/// the reader's language.</summary>
internal static class CodePages
{
    private const string Json = "application/json";
    private const string Html = "text/html";

    // Kept for an hour: codes are added with a release, under the same path.
    private const string Caching = "public, max-age=3600";

    /// <summary>Serves a page for each code, and one that lists them all.</summary>
    /// <param name="app">The service. Nothing is written before it is first asked for.</param>
    public static void MapCodes(this WebApplication app)
    {
        app.Map(
            ProblemAddress.Path,
            words => CodeRegister.All.Select(code => CodeEntry.Of(code, words)).ToArray(),
            words => (words.Text(CodePageTexts.Title), List(words))
        );
        foreach (Code code in CodeRegister.All)
        {
            app.Map($"{ProblemAddress.Path}/{code.Name}", words => CodeEntry.Of(code, words), words => (code.Name, Body(code, words)));
        }
    }

    private static void Map<T>(
        this WebApplication app,
        string path,
        Func<MessageWriter, T> entry,
        Func<MessageWriter, (string Title, string Body)> page
    )
    {
        Lazy<(FixedAnswer Json, FixedAnswer Html)>[] answers =
        [
            .. Enum.GetValues<Language>().Select(language => new Lazy<(FixedAnswer, FixedAnswer)>(() => Of(language, entry, page))),
        ];
        app.MapMethods(
                path,
                FixedRoutes.Methods,
                http =>
                {
                    Language language = ReaderLanguage.Of(http);
                    http.Response.Headers.AppendCommaSeparatedValues(HeaderNames.Vary, HeaderNames.Accept, HeaderNames.AcceptLanguage);
                    http.Response.Headers.ContentLanguage = LanguageTags.Of(language);
                    return AcceptHeader.Choose(http.Request.Headers.Accept, [Json, Html]) switch
                    {
                        0 => answers[(int)language].Value.Json.WriteAsync(http),
                        1 => answers[(int)language].Value.Html.WriteAsync(http),
                        _ => Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable),
                    };
                }
            )
            .ExcludeFromDescription();
    }

    private static (FixedAnswer Json, FixedAnswer Html) Of<T>(
        Language language,
        Func<MessageWriter, T> entry,
        Func<MessageWriter, (string Title, string Body)> page
    )
    {
        MessageWriter words = new(language, LengthUnit.Inch);
        (string title, string body) = page(words);
        string html = PageFrame.Of(title, $"<h1>{WebUtility.HtmlEncode(title)}</h1>\n{body}", LanguageTags.Of(language));
        return (
            new FixedAnswer(
                JsonSerializer.SerializeToUtf8Bytes(entry(words), JsonSerializerOptions.Web),
                $"{Json}; charset=utf-8",
                Caching
            ),
            new FixedAnswer(Encoding.UTF8.GetBytes(html), $"{Html}; charset=utf-8", Caching)
        );
    }

    private static string List(MessageWriter words)
    {
        // Relative addresses, so that a service behind a path of its own needs no setting here.
        IEnumerable<string> rows = CodeRegister.All.Select(code =>
            $"<dt><a href=\"problems/{code.Name}\">{code.Name}</a></dt>\n<dd>{Text(code.Meaning, words)}</dd>\n"
        );
        return $"<dl>\n{string.Concat(rows)}</dl>";
    }

    private static string Body(Code code, MessageWriter words)
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

        string all = $"<p><a href=\"../problems\">{Text(CodePageTexts.All, words)}</a></p>";
        return string.Concat(lines.Select(line => $"<p>{Text(line, words)}</p>\n")) + all;
    }

    private static string Text(Message message, MessageWriter words) => WebUtility.HtmlEncode(words.Text(message));
}
