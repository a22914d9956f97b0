using CushionService.Documents.Drawings;

namespace CushionService.Documents.Sheets;

/// <summary>Sets a table on a page: a slab for each row, its remark with it.</summary>
/// <param name="table">The table.</param>
/// <param name="text">Sets its words.</param>
/// <param name="width">Its width, in millimetres.</param>
internal sealed class TableSetter(Table table, TextSetter text, double width)
{
    private const double HeadSize = 0.88;
    private const double Inside = 0.25;
    private readonly double _em = text.Em;
    private readonly double[] _widths = ColumnWidths.Of(table, width / text.Em);

    /// <summary>The slabs: caption, head, rows.</summary>
    public IEnumerable<Slab> Slabs()
    {
        if (table.Caption.Length > 0)
        {
            yield return text.Heading(new Heading(table.Caption, 3), width);
        }

        Slab head = Head();
        yield return head;
        for (int i = 0; i < table.Rows.Count; i++)
        {
            // No row is alone on a page: the first keeps the second, the last but one the last.
            bool keeps = i + 1 < table.Rows.Count && (i == 0 || i == table.Rows.Count - 2);
            yield return Set(table.Rows[i]) with
            {
                Head = head,
                KeepsNext = keeps,
            };
        }
    }

    private Slab Head()
    {
        double size = HeadSize * _em;
        IReadOnlyList<TextLine>[] heads =
        [
            .. table.Columns.Select((column, i) => LineBreaks.Of([new Run(column.Head, true)], Room(i) / HeadSize)),
        ];
        double height = heads.Max(lines => lines.Count) * size * TextSetter.Pitch + 2 * Inside * _em;
        return new Slab(
            height,
            (canvas, at) =>
            {
                for (int i = 0; i < heads.Length; i++)
                {
                    WriteCell(canvas, at, i, heads[i], size, 0);
                }

                Rule(canvas, at.Y + height, at.X, 0.4);
            }
        )
        {
            Above = 0.4 * _em,
            KeepsNext = true,
        };
    }

    private Slab Set(Row row)
    {
        IReadOnlyList<TextLine>[] cells = [.. row.Cells.Select((cell, i) => LinesOf(cell, i, row.IsTotal))];
        double body = row.Cells.Select((cell, i) => Math.Max(cells[i].Count * TextSetter.Pitch, cell.Sign is null ? 0 : 1.7)).Max() * _em;
        body = table.Columns.Any(column => column.Kind == ColumnKind.Tick) ? Math.Max(body, ColumnWidths.Tick * _em) : body;
        double small = TextSetter.Small * _em;
        // A remark begins under the row's name, which is in the first column or, after a tick or a number, in the second.
        double indent = (ColumnWidths.Padding + (table.Columns[0].Kind == ColumnKind.Name ? 0 : _widths[0])) * _em;
        IReadOnlyList<TextLine> note = row.Note is { Length: > 0 } said ? LineBreaks.Of([new Run(said)], (width - indent) / small) : [];
        double height = body + note.Count * small * TextSetter.Pitch + 2 * Inside * _em;
        return new Slab(
            height,
            (canvas, at) =>
            {
                for (int i = 0; i < cells.Length; i++)
                {
                    Draw(canvas, at, i, row.Cells[i], cells[i]);
                }

                canvas.Open("g", ("fill", "#333333"));
                TextSetter.Write(canvas, at + new Spot(indent, Inside * _em + body), note, small);
                canvas.Close();
                Rule(canvas, row.IsTotal ? at.Y : at.Y + height, at.X, row.IsTotal ? 0.4 : 0.15);
            }
        );
    }

    private void Draw(Canvas canvas, Spot at, int column, Cell cell, IReadOnlyList<TextLine> lines)
    {
        double indent = 0;
        if (table.Columns[column].Kind == ColumnKind.Tick)
        {
            double side = (ColumnWidths.Tick - 0.3) * _em;
            canvas.Open("g", ("fill", "none"), ("stroke", "#111111"), ("stroke-width", "0.3"));
            canvas.Rectangle(new Box(Left(column, at) + ColumnWidths.Padding * _em, at.Y + (Inside + 0.15) * _em, side, side));
            canvas.Close();
            return;
        }

        if (cell.Sign is { } sign)
        {
            canvas.Draw(sign, new Spot(Left(column, at) + ColumnWidths.Padding * _em, at.Y + Inside * _em), 1.7 * _em);
            indent = ColumnWidths.Sign * _em;
        }

        WriteCell(canvas, at, column, lines, _em, indent);
    }

    private void WriteCell(Canvas canvas, Spot at, int column, IReadOnlyList<TextLine> lines, double size, double indent)
    {
        double y = at.Y + Inside * _em;
        double x = Left(column, at) + ColumnWidths.Padding * _em + indent;
        for (int i = 0; i < lines.Count; i++)
        {
            double aside = table.Columns[column].Kind == ColumnKind.Number ? Room(column) * _em - lines[i].Width * size : 0;
            TextSetter.Write(canvas, new Spot(x + aside, y + i * size * TextSetter.Pitch), [lines[i]], size);
        }
    }

    private IReadOnlyList<TextLine> LinesOf(Cell cell, int column, bool total)
    {
        bool bold = cell.Bold || total || table.Columns[column].Kind == ColumnKind.Name;
        double room = Room(column) - (cell.Sign is null ? 0 : ColumnWidths.Sign);
        return LineBreaks.Of([new Run(cell.Text, bold, cell.Link)], room);
    }

    // A little wider than measured, so that a word that just fits does not fall into the next line by rounding.
    private double Room(int column) => _widths[column] - 2 * ColumnWidths.Padding + 1e-6;

    private double Left(int column, Spot at) => at.X + _widths.AsSpan(0, column).ToArray().Sum() * _em;

    private void Rule(Canvas canvas, double y, double x, double thick)
    {
        canvas.Open("g", ("stroke", "#111111"), Canvas.Attribute("stroke-width", thick));
        canvas.Line(new Spot(x, y), new Spot(x + width, y));
        canvas.Close();
    }
}
