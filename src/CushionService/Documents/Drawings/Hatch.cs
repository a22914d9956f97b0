namespace CushionService.Documents.Drawings;

/// <summary>Fills that say what an area is: slanting lines for waste, dots for selvedge.</summary>
internal static class Hatch
{
    private const double Pitch = 2;
    private const double DotPitch = 0.8;

    /// <summary>Defines both fills.</summary>
    public static void Define(Canvas canvas)
    {
        double pitch = Pitch * canvas.Mm;
        Open(canvas, "waste", pitch, "rotate(45)");
        canvas.OpenStroked(Stroke.Hatch);
        canvas.Line(new Spot(pitch / 2, 0), new Spot(pitch / 2, pitch));
        canvas.Close();
        canvas.Close();

        double dots = DotPitch * canvas.Mm;
        Open(canvas, "selvedge", dots, "rotate(0)");
        canvas.Element("circle", Canvas.Attribute("cx", dots / 2), Canvas.Attribute("cy", dots / 2), Canvas.Attribute("r", dots / 5), ("fill", Stroke.Soft));
        canvas.Close();
    }

    public static (string, string) Waste(Canvas canvas) => ("fill", $"url(#{canvas.Id}-waste)");

    public static (string, string) Selvedge(Canvas canvas) => ("fill", $"url(#{canvas.Id}-selvedge)");

    private static void Open(Canvas canvas, string name, double pitch, string turn) => canvas.Open(
        "pattern", ("id", $"{canvas.Id}-{name}"), ("patternUnits", "userSpaceOnUse"),
        Canvas.Attribute("width", pitch), Canvas.Attribute("height", pitch), ("patternTransform", turn));
}
