using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Tests;

/// <summary>Finds panels and edges by the text of answers, so that tests read as answers do.</summary>
internal static class PatternNames
{
    public static Panel Panel(this Pattern pattern, string part) => pattern.Panels.Single(panel => panel.Part.ToString() == part);

    public static Edge Edge(this Panel panel, string name) => panel.Edges.Single(edge => edge.Name.ToString() == name);
}
