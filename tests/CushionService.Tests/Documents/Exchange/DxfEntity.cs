using System.Globalization;

namespace CushionService.Tests.Documents.Exchange;

/// <summary>An entity of a drawing exchange file.</summary>
internal sealed record DxfEntity(string Kind, string Block, List<(int Code, string Value)> Pairs)
{
    public int Layer => int.Parse(Text(8) ?? "0", CultureInfo.InvariantCulture);

    public string? Text(int code) => Pairs.Find(pair => pair.Code == code).Value;

    public double Number(int code) => double.Parse(Text(code)!, CultureInfo.InvariantCulture);
}
