using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace CushionService.Documents.Sheets;

/// <summary>Writes HTML from interpolated strings: what is in the source is markup, every hole is text and is escaped. A hole
/// takes text, a whole number or a finished drawing, nothing else, so that no length is printed by accident.</summary>
internal sealed class Html
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);
    private readonly StringBuilder _text = new();

    /// <summary>Adds markup with text in its holes, and ends the line.</summary>
    /// <param name="markup">Made by the compiler from an interpolated string, straight into this document.</param>
    public void Add([InterpolatedStringHandlerArgument("")] ref Markup markup) => _text.Append('\n');

    /// <summary>Adds a style sheet, which must be built of our own rules and of <see cref="CssText"/>.</summary>
    /// <param name="rules">Not escaped: text of callers must have gone through <see cref="CssText"/>.</param>
    public void AddStyle(string rules) => _text.Append("<style>\n").Append(rules).Append("\n</style>\n");

    /// <inheritdoc />
    public override string ToString() => _text.ToString();

    /// <summary>Sends the parts of an interpolated string to the document.</summary>
    [InterpolatedStringHandler]
    internal readonly ref struct Markup
    {
        private const int TypicalHole = 16;
        private readonly StringBuilder _text;

        public Markup(int literalLength, int formattedCount, Html html)
        {
            _text = html._text;
            _text.EnsureCapacity(_text.Length + literalLength + TypicalHole * formattedCount);
        }

        /// <summary>What is written in the source: markup.</summary>
        public void AppendLiteral(string markup) => _text.Append(markup);

        /// <summary>A hole with text: escaped, and without the signs that HTML does not allow.</summary>
        public void AppendFormatted(string? text) => _text.Append(Encoder.Encode(PrintableText.Of(text ?? "")));

        /// <summary>A hole with a whole number.</summary>
        public void AppendFormatted(int number) => _text.Append(number.ToString(CultureInfo.InvariantCulture));

        /// <summary>A hole with a drawing of ours, which is markup already.</summary>
        public void AppendFormatted(Svg drawing) => _text.Append(drawing.Element);
    }
}
