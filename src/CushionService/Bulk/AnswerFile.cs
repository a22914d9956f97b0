namespace CushionService.Bulk;

/// <summary>A file of answers, one on each line, that a run which was stopped can go on with.</summary>
internal sealed class AnswerFile : IDisposable
{
    // Answers wait in memory up to this; what is lost with them is quoted again.
    private const int Buffer = 1 << 16;

    private readonly FileStream _file;

    private AnswerFile(FileStream file, long lines) => (_file, Lines) = (file, lines);

    /// <summary>How many answers it has, those of runs before too.</summary>
    public long Lines { get; private set; }

    /// <summary>How many of the answers of this run are problems.</summary>
    public long Problems { get; private set; }

    /// <summary>Opens a file, or makes it. The beginning of a line whose end was never written is cut off.</summary>
    /// <param name="path">The file; its folder must exist. Another run may read it meanwhile, and none may write
    /// it.</param>
    /// <exception cref="IOException">The file cannot be opened, or another run writes it.</exception>
    public static AnswerFile Open(string path)
    {
        FileStream file = new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read, Buffer);
        byte[] part = new byte[Buffer];
        long lines = 0,
            end = 0,
            at = 0;
        for (int read; (read = file.Read(part)) > 0; at += read)
        {
            // Only whole lines count: one that was cut off by a crash is quoted again.
            ReadOnlySpan<byte> bytes = part.AsSpan(0, read);
            lines += bytes.Count((byte)'\n');
            int last = bytes.LastIndexOf((byte)'\n');
            end = last < 0 ? end : at + last + 1;
        }

        file.SetLength(end);
        file.Position = end;
        return new AnswerFile(file, lines);
    }

    /// <summary>Adds an answer.</summary>
    /// <param name="answer">One line, without its end.</param>
    /// <param name="isProblem">Whether it says why there is no quote.</param>
    /// <param name="cancellation">Ends the writing; the next run cuts off what was begun.</param>
    public async ValueTask AddAsync(ReadOnlyMemory<byte> answer, bool isProblem, CancellationToken cancellation)
    {
        await _file.WriteAsync(answer, cancellation);
        _file.WriteByte((byte)'\n');
        Lines++;
        Problems += isProblem ? 1 : 0;
    }

    /// <summary>Writes what waits in memory, and closes the file.</summary>
    public void Dispose() => _file.Dispose();
}
