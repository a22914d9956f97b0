namespace CushionService.Engine.Specifications.Fillings;

/// <summary>How full a cushion without foam is.</summary>
public enum Fullness
{
    /// <summary>Soft: it gives way at once.</summary>
    Soft,

    /// <summary>As most cushions are.</summary>
    Medium,

    /// <summary>As full as the cover takes it.</summary>
    Plump,
}
