using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace CushionService.Engine.Tests.Messages;

/// <summary>A file that a test gives to the compiler.</summary>
internal sealed class GivenFile(string path, string text) : AdditionalText
{
    public override string Path => path;

    public override SourceText GetText(CancellationToken cancellationToken = default) => SourceText.From(text);
}
