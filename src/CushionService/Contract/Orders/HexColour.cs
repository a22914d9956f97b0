namespace CushionService.Contract.Orders;

/// <summary>The form of a colour (CSS Color Module Level 4, section 5.2, without transparency).</summary>
internal static class HexColour
{
    /// <summary>A number sign, and three or six hexadecimal digits.</summary>
    public const string Pattern = "^#([0-9A-Fa-f]{3}|[0-9A-Fa-f]{6})$";

    /// <summary>A colour in six small digits.</summary>
    /// <param name="colour">A colour of that form.</param>
    public static string InSix(string colour) =>
        colour.Length == 4
            ? $"#{colour[1]}{colour[1]}{colour[2]}{colour[2]}{colour[3]}{colour[3]}".ToLowerInvariant()
            : colour.ToLowerInvariant();
}
