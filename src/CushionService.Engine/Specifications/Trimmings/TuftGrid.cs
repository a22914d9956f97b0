namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>How tufts stand to each other.</summary>
public enum TuftGrid
{
    /// <summary>In rows and columns.</summary>
    Square,

    /// <summary>In rows and columns, with one more in the middle of each four.</summary>
    Diamond,
}
