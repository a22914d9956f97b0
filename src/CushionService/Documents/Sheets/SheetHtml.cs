using System.Globalization;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.Sheets;

/// <summary>A sheet as HTML: one file, without script and without a file beside it.</summary>
internal sealed class SheetHtml
{
    private readonly Html _html = new();
    private readonly StyleBook _styles = new();

    // The share of a page that is reckoned with: browsers set lines a little wider apart than our own pages do.
    private const double Room = 0.92;
    private readonly double _em;

    private SheetHtml(double em) => _em = em;

    /// <summary>The document.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="cancellation">Gives up between two parts.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static string Write(Sheet sheet, CancellationToken cancellation)
    {
        var body = new SheetHtml(sheet.Look.Em);
        foreach (Section section in sheet.Sections)
        {
            cancellation.ThrowIfCancellationRequested();
            int size = (int)Math.Round(100 * SheetPages.SizeOf(sheet, section, Room));
            body._html.Add($"""<section class="part size-{size}">""");
            body.AddAll(section.Blocks);
            body._html.Add($"""</section>""");
        }

        var html = new Html();
        html.Add($"""<!DOCTYPE html>""");
        html.Add($"""<html lang="{Codes.Of(sheet.Language)}"><head><meta charset="utf-8">""");
        // Nothing is loaded and no script runs, wherever the file is opened.
        html.Add($"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">""");
        html.Add($"""<meta name="viewport" content="width=device-width"><title>{sheet.Title}</title>""");
        html.AddStyle(Stylesheet.For(sheet) + "\n" + body._styles);
        html.Add($"""</head><body><main>""");
        html.Add($"""{new Svg(body._html.ToString())}</main></body></html>""");
        return html.ToString();
    }

    private void AddAll(IReadOnlyList<Block> blocks)
    {
        foreach (Block block in blocks)
        {
            Add(block);
        }
    }

    private void Add(Block block)
    {
        switch (block)
        {
            case Heading heading:
                AddHeading(heading);
                break;
            case Paragraph paragraph:
                AddParagraph(paragraph);
                break;
            case Figure figure:
                AddFigure(figure);
                break;
            case Table table:
                TableHtml.Add(_html, _styles, table, _em);
                break;
            case Bullets bullets:
                _html.Add($"""<ul class="{(bullets.Ticked ? "ticks" : "")}">""");
                foreach (IReadOnlyList<Run> entry in bullets.Entries)
                {
                    _html.Add($"""<li>""");
                    AddRuns(entry);
                    _html.Add($"""</li>""");
                }

                _html.Add($"""</ul>""");
                break;
            case StepList steps:
                AddSteps(steps);
                break;
            case Beside beside:
                _html.Add($"""<div class="{(beside.Framed ? "beside framed" : "beside")}">""");
                foreach ((double share, IReadOnlyList<Block> inside) in beside.Columns)
                {
                    _html.Add($"""<div class="{_styles.ClassOf($"flex: {Number(share * 100)} 1 0")}">""");
                    AddAll(inside);
                    _html.Add($"""</div>""");
                }

                _html.Add($"""</div>""");
                break;
            default:
                throw new NotSupportedException($"No HTML knows the block {block.GetType().Name}.");
        }
    }

    private void AddHeading(Heading heading)
    {
        switch (heading.Level)
        {
            case 1:
                _html.Add($"""<h1>{heading.Text}</h1>""");
                break;
            case 2:
                _html.Add($"""<h2>{heading.Text}</h2>""");
                break;
            default:
                _html.Add($"""<h3>{heading.Text}</h3>""");
                break;
        }
    }

    private void AddParagraph(Paragraph paragraph)
    {
        string style = paragraph.Tone switch
        {
            Tone.Small => "small",
            Tone.Large => "large",
            Tone.Notice => "notice",
            _ => "",
        };
        _html.Add($"""<p class="{style}">""");
        AddRuns(paragraph.Runs);
        _html.Add($"""</p>""");
    }

    private void AddRuns(IReadOnlyList<Run> runs)
    {
        // Each ends its line, which is a space.
        foreach (Run run in runs)
        {
            if (run.Link is { } link)
            {
                _html.Add($"""<a href="{link}">{run.Text}</a>""");
            }
            else if (run.Bold)
            {
                _html.Add($"""<strong>{run.Text}</strong>""");
            }
            else
            {
                _html.Add($"""{run.Text}""");
            }
        }
    }

    private void AddFigure(Figure figure)
    {
        Spot box = ViewBox.Of(figure.Drawing);
        double width = Math.Min(figure.Width, figure.Height * box.X / box.Y);
        _html.Add($"""<figure class="{_styles.ClassOf($"width: {Number(width / _em)}em")}">{new Svg(figure.Drawing)}</figure>""");
    }

    private void AddSteps(StepList steps)
    {
        _html.Add($"""<ol class="steps">""");
        foreach (StepEntry step in steps.Steps)
        {
            _html.Add($"""<li value="{step.Number}"><div class="words">""");
            AddAll(step.Words);
            _html.Add($"""</div>""");
            if (step.Picture is { } picture)
            {
                AddFigure(picture);
            }

            _html.Add($"""</li>""");
        }

        _html.Add($"""</ol>""");
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
