using System.Globalization;

namespace CushionService.Tests.Documents.Exchange;

/// <summary>Reads a drawing exchange file of release 12 as its reference says, by pairs of lines; shares no code with the writer.</summary>
internal sealed class DxfReader
{
    private DxfReader(List<DxfEntity> entities) => Entities = entities;

    /// <summary>Every entity in the order of the file, with the block that it is in.</summary>
    public IReadOnlyList<DxfEntity> Entities { get; }

    public static DxfReader Read(string file)
    {
        Assert.All(file, letter => Assert.True(letter is '\r' or '\n' or (>= ' ' and <= '~')));
        string[] lines = file.Split("\r\n");
        List<DxfEntity> entities = [];
        string block = "";
        for (int i = 0; i + 1 < lines.Length; i += 2)
        {
            int code = int.Parse(lines[i], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture);
            if (code == 0)
            {
                block = lines[i + 1] == "ENDBLK" ? "" : block;
                entities.Add(new DxfEntity(lines[i + 1], block, []));
            }
            else if (entities.Count > 0)
            {
                entities[^1].Pairs.Add((code, lines[i + 1]));
                if (entities[^1].Kind == "BLOCK" && code == 2)
                {
                    block = lines[i + 1];
                }
            }
        }

        Assert.Equal("EOF", entities[^1].Kind);
        return new DxfReader(entities);
    }

    /// <summary>The corners of the polylines of a block on a layer.</summary>
    public List<List<(double X, double Y)>> Polylines(string block, int layer)
    {
        List<List<(double X, double Y)>> found = [];
        foreach (DxfEntity entity in Entities.Where(entity => entity.Block == block && entity.Layer == layer))
        {
            if (entity.Kind == "POLYLINE")
            {
                found.Add([]);
            }
            else if (entity.Kind == "VERTEX")
            {
                found[^1].Add((entity.Number(10), entity.Number(20)));
            }
        }

        return found;
    }
}
