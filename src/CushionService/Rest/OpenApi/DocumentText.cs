using System.Text.RegularExpressions;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Completes the text of the document once everything is in it: a sentence for each heading, and descriptions without the line
/// breaks of the source. Paragraphs and lists of Markdown keep theirs.</summary>
internal sealed partial class DocumentText : IDocumentFilter
{
    /// <summary>Completes the document.</summary>
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        IEnumerable<OpenApiOperation> operations = swaggerDoc
            .Paths.Values.SelectMany(path => path.Operations ?? [])
            .Select(entry => entry.Value);
        swaggerDoc.Tags = new SortedSet<OpenApiTag>(
            operations
                .SelectMany(operation => operation.Tags ?? new HashSet<OpenApiTagReference>(), (operation, tag) => (operation, tag.Name))
                .DistinctBy(entry => entry.Name)
                .Select(entry => new OpenApiTag { Name = entry.Name, Description = entry.operation.Summary + "." }),
            Comparer<OpenApiTag>.Create((one, other) => string.CompareOrdinal(one.Name, other.Name))
        );
        new OpenApiWalker(new Descriptions()).Walk(swaggerDoc);
    }

    // A line break that begins neither a paragraph nor an entry of a list.
    [GeneratedRegex(@"(?<!\n)\r?\n[ \t]*(?![-\s])")]
    private static partial Regex Break();

    private sealed class Descriptions : OpenApiVisitorBase
    {
        public override void Visit(IOpenApiSchema schema)
        {
            if (schema.Description is { } text && text.Contains('\n', StringComparison.Ordinal))
            {
                schema.Description = Break().Replace(text, " ");
            }
        }

        // A reference has a description of its own.
        public override void Visit(IOpenApiReferenceHolder referenceHolder)
        {
            if (referenceHolder is OpenApiSchemaReference { Description: { } text } schema && text.Contains('\n', StringComparison.Ordinal))
            {
                schema.Description = Break().Replace(text, " ");
            }
        }

        public override void Visit(IOpenApiParameter parameter)
        {
            if (parameter.Description is { } text && text.Contains('\n', StringComparison.Ordinal))
            {
                parameter.Description = Break().Replace(text, " ");
            }
        }
    }
}
