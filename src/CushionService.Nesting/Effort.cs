namespace CushionService.Nesting;

/// <summary>How hard to search. Each effort is a number of search steps, never a time, so that the same problem
/// gives the same layout on every machine.</summary>
public enum Effort
{
    /// <summary>A page is waiting: up to about 5 ms for 20 rectangles on one core.</summary>
    Quick,

    /// <summary>A quote is waiting: up to about 0.5 s for 20 rectangles on one core.</summary>
    Standard,

    /// <summary>A cutting table is waiting: up to about 11 s for 20 rectangles on one core.</summary>
    Thorough,

    /// <summary>A production order that is cut again and again: up to a minute on two cores. By key, and in streams alone.</summary>
    Overnight,
}
