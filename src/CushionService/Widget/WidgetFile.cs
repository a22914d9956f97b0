using System.Collections.Immutable;

namespace CushionService.Widget;

/// <summary>A file of the widget.</summary>
/// <param name="Name">Its path beside the module, as <c>words/de.json</c>.</param>
/// <param name="MediaType">Its media type.</param>
/// <param name="Bytes">Its content.</param>
internal sealed record WidgetFile(string Name, string MediaType, ImmutableArray<byte> Bytes);
