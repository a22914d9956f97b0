namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>How a tie or a strap is made from its strip.</summary>
public enum StrapMake
{
    /// <summary>Both long edges are folded to the middle, and then it is folded in half: four layers.</summary>
    Folded,

    /// <summary>Sewn into a tube and turned: two layers.</summary>
    Tube,
}
