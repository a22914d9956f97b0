namespace CushionService.Nesting.Search;

/// <summary>Numbers that tell kinds apart in a hash of how many copies of each are left. The hash is the sum of count × salt, which is
/// quick to form, and serves where a clash costs a candidate and not a proof.</summary>
internal static class KindSalts
{
    /// <summary>A number for each kind, the same on every machine (the mixing of splitmix64: Steele, Lea and Flood 2014).</summary>
    /// <param name="kinds">Number of kinds.</param>
    public static ulong[] Of(int kinds)
    {
        var salts = new ulong[kinds];
        ulong salt = 0;
        for (var kind = 0; kind < kinds; kind++)
        {
            salt += 0x9E3779B97F4A7C15UL;
            salts[kind] = (salt ^ (salt >> 30)) * 0xBF58476D1CE4E5B9UL;
        }

        return salts;
    }
}
