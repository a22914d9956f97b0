namespace CushionService.Engine.Tests;

/// <summary>Where the facts in the tests come from.</summary>
public static class Sources
{
    public const string Mathematics = "general mathematics";
    public const string Derived = "follows from the formula in the test";
    public const string Practice = "common practice, no source";

    public const string InternationalYard = "Federal Register, 1 July 1959: the international yard and pound";
    public const string LinearMeasures = "NIST Handbook 44 (2007), section 5.52, Linear Measures";
    public const string DefinedUnitFractions = "Vermont Statutes, title 9, section 2655: a fraction of a unit is the like fraction of the defined unit";
    public const string ConversionTable = "SI conversion appendix, navalfacilities.tpub.com/1004_6/1004_60046.htm";
    public const string CurrencyCodes = "ISO 4217, from memory";

    public const string PaperBag = "A. C. Robin, Paper bag problem, Mathematics Today, June 2004";
    public const string StitchGeometry = "textilecalculations.com, calculate amount of sewing thread consumption";
    public const string MeasuredThread = "apparelscience.com, measuring actual thread consumption";
    public const string EstimatedThread = "apparel-merchandising.com, 2011/08, estimating thread consumption";
    public const string HalfDrop = "L. F. Day, Pattern Design, page 76: only a half drop returns after two columns";
    public const string NewDressmaker = "The New Dressmaker, 1921, pages 15 and 135, chapter 28: true bias, flat piping strips and binding, fullness of ruffles";
    public const string TeachersBias = "A Sewing Course for Teachers, True Bias: the spacing along the selvedge is the width and a third";
    public const string ChapeReplacement = "US Army TM 10-8340-208-13, chape replacement: webbing ends turned under 1/2 in";
    public const string PatchTurnUnder = "US Army TM 10-8400-203-23: patches turned under 3/8 in, edge-stitched 1/8 in";
}
