using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;

namespace CushionService.Documents;

/// <summary>An answer in another form than JSON, or why there is none.</summary>
internal sealed record PrintedDocument
{
    /// <summary>The most bytes that a document may have: 24 MiB.</summary>
    public const int MostBytes = 24 << 20;

    private PrintedDocument() { }

    /// <summary>What is sent; empty when there is nothing to send.</summary>
    public byte[] Bytes { get; private init; } = [];

    /// <summary>Whether the call names a part that the answer has not.</summary>
    public bool LacksPart { get; private init; }

    /// <summary>What to tell of a part that the answer has not, where it can be said better than by the call alone; else null.</summary>
    public Message? Lacking { get; private init; }

    /// <summary>Why it cannot be printed; null when it can.</summary>
    public Violation? Refused { get; private init; }

    /// <summary>For a call that names a part which the answer has not.</summary>
    public static PrintedDocument Missing { get; } = new() { LacksPart = true };

    /// <summary>For a call that names no part, or one that the answer has not.</summary>
    /// <param name="what">Which parts there are.</param>
    public static PrintedDocument Lacks(Message what) => new() { LacksPart = true, Lacking = what };

    /// <summary>A document of text, in UTF-8.</summary>
    public static PrintedDocument Of(string text) => Of(System.Text.Encoding.UTF8.GetBytes(text));

    /// <summary>A document; a refusal when it is longer than <see cref="MostBytes"/>.</summary>
    public static PrintedDocument Of(byte[] bytes) =>
        bytes.Length <= MostBytes ? new PrintedDocument { Bytes = bytes } : TooLong(bytes.Length);

    /// <summary>A refusal of a document that is longer than <see cref="MostBytes"/>.</summary>
    /// <param name="bytes">How long it is, or at least.</param>
    public static PrintedDocument TooLong(long bytes) =>
        Refuse(
            new Violation("", "document-too-long", DocumentTexts.DocumentTooLong((int)((bytes + (1 << 20) - 1) >> 20), MostBytes >> 20))
        );

    /// <summary>Nothing, and why.</summary>
    public static PrintedDocument Refuse(Violation why) => new() { Refused = why };
}
