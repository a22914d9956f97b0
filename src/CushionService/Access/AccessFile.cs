using System.Text.Json;
using Microsoft.Extensions.Configuration.Json;

namespace CushionService.Access;

/// <summary>The file of its own that <c>Access:File</c> names, such as a mounted secret. A version that is no JSON is not taken:
/// what the file said before stays, so that no key is lost to a slip of the hand.</summary>
/// <param name="source">The file; watched.</param>
internal sealed class AccessFile(JsonConfigurationSource source) : JsonConfigurationProvider(source)
{
    private bool _read;

    /// <summary>Why the version that lies there now is not taken; null when it is.</summary>
    public string? Fault { get; private set; }

    /// <summary>Reads the file.</summary>
    /// <param name="stream">The version that lies there now.</param>
    /// <exception cref="FormatException">It is no JSON at the start.</exception>
    public override void Load(Stream stream)
    {
        try
        {
            base.Load(stream);
            (_read, Fault) = (true, null);
        }
        catch (FormatException exception) when (_read)
        {
            // Not the text of the exception: it quotes the file.
            long? line = (exception.InnerException as JsonException)?.LineNumber + 1;
            Fault = line is null ? $"{Source.Path} cannot be read." : $"{Source.Path}, line {line}: this is not JSON.";
        }
    }

    /// <summary>Adds a file, which is read after the sources before it.</summary>
    /// <param name="configuration">The service's.</param>
    /// <param name="path">The file.</param>
    public static void Add(IConfigurationBuilder configuration, string path)
    {
        Watched source = new()
        {
            Path = Path.GetFullPath(path),
            Optional = false,
            ReloadOnChange = true,
        };
        source.ResolveFileProvider();
        configuration.Add(source);
    }

    private sealed class Watched : JsonConfigurationSource
    {
        public override IConfigurationProvider Build(IConfigurationBuilder builder)
        {
            EnsureDefaults(builder);
            return new AccessFile(this);
        }
    }
}
