namespace CushionService.Engine.Tests;

/// <summary>Where the facts in the tests come from.</summary>
public static class Sources
{
    public const string Mathematics = "general mathematics";
    public const string Derived = "follows from the formula in the test";
    public const string Practice = "common practice, no source";

    public const string InternationalYard = "Federal Register, 1 July 1959: the international yard and pound";
    public const string LinearMeasures = "NIST Handbook 44 (2007), section 5.52, Linear Measures";
    public const string DefinedUnitFractions =
        "Vermont Statutes, title 9, section 2655: a fraction of a unit is the like fraction of the defined unit";
    public const string ConversionTable = "SI conversion appendix, navalfacilities.tpub.com/1004_6/1004_60046.htm";
    public const string NavyEquivalents =
        "US Navy training course 14076, appendix 2: common equivalents and conversions, accurate to parts per million";
    public const string ForcesEquivalents = "AFM 91-19, TM 5-629, NAVFAC MO-314 (24 May 1989), attachment 30: list of equivalent measures";
    public const string ReferenceGeometry = "NetTopologySuite, of arcs drawn as chords";
    public const string CurrencyCodes = "ISO 4217, from memory";

    public const string PaperBag = "A. C. Robin, Paper bag problem, Mathematics Today, June 2004";
    public const string StitchGeometry = "textilecalculations.com, calculate amount of sewing thread consumption";
    public const string MeasuredThread = "apparelscience.com, measuring actual thread consumption";
    public const string EstimatedThread = "apparel-merchandising.com, 2011/08, estimating thread consumption";
    public const string HalfDrop = "L. F. Day, Pattern Design, page 76: only a half drop returns after two columns";
    public const string NewDressmaker =
        "The New Dressmaker, 1921, pages 15 and 135, chapter 28: true bias, flat piping strips and binding, fullness of ruffles";
    public const string TeachersBias = "A Sewing Course for Teachers, True Bias: the spacing along the selvedge is the width and a third";
    public const string ChapeReplacement = "US Army TM 10-8340-208-13, chape replacement: webbing ends turned under 1/2 in";
    public const string PatchTurnUnder = "US Army TM 10-8400-203-23: patches turned under 3/8 in, edge-stitched 1/8 in";
    public const string FieldOfficer = "B. Johnston, NZ Department of Agriculture, Making Cushions, Te Ao Hou, April 1956, page 60";
    public const string SlipCovers = "Pfister, EC57-1125 How to Make Slip Covers, University of Nebraska extension, 1957: 1 in seams";
    public const string HistoricBorder = "Southland Times, 11 February 1939: a border of at least 3 1/4 diameters, plus joins";
    public const string BoxX = "US Army TM 10-1670-281-23P: box-X 1 in long on 1 in webbing, 5 to 8 stitches an inch";
    public const string TentRepair = "US Army TM 10-8340-224-13, paragraph 5-6: ends of a continuous line overlap at least 1/2 in";
    public const string FoamTolerance = "Joint Industry Foam Standards (1994), section 10: slab length + 1/2, - 0 in, width + 1/4, - 0 in";
    public const string StitchClasses = "ISO 4915 classes, as in the IASRI course on stitches: 100 to 600";
    public const string CanvasWork =
        "D. Casey, International Marine/McGraw-Hill, ISBN 0-07-013391-3: wrap, width and boxing each 1 in over, notches at top, middle "
        + "and bottom of the curve";
    public const string FoamFirmness =
        "PFA InTouch, volume 4, number 3: support factor is IFD at 65 % over IFD at 25 %; density and firmness are given together";
    public const string WidthChart =
        "a widely reprinted chart of widths, of weak authority (greenspun.com, msg_id 008fgB): 2 1/4 yd at 36 in is 1 3/4 at 45 and 1 "
        + "1/2 at 54";
}
