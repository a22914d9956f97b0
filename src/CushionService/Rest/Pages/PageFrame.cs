using System.Net;

namespace CushionService.Rest.Pages;

/// <summary>What every page of text has around it: its head, and the links to the other pages.</summary>
internal static class PageFrame
{
    /// <summary>A page. The policy of <c>SecurityHeaders</c> allows no inline style.</summary>
    /// <param name="title">Its title, as text.</param>
    /// <param name="body">What it shows, as HTML.</param>
    /// <param name="language">The tag of its language.</param>
    public static string Of(string title, string body, string language = "en") =>
        $"""
            <!DOCTYPE html>
            <html lang="{language}">
            <head>
              <meta charset="utf-8">
              <meta name="viewport" content="width=device-width">
              <title>{WebUtility.HtmlEncode(title)}</title>
              <link rel="stylesheet" href="/site/palette.css">
              <link rel="stylesheet" href="/site/site.css">
              <link rel="stylesheet" href="/site/guide.css">
              <link rel="icon" href="/site/cushion.svg" type="image/svg+xml">
            </head>
            <body>
              <nav aria-label="Site"><a href="/">CushionService</a> <a href="/guide/">Guide</a> <a href="/docs/">Try the calls</a></nav>
              <main>
            {body}
              </main>
            </body>
            </html>

            """;
}
