namespace CushionService.Engine.Geometry;

/// <summary>Names an edge of an outline or a panel by words from the general to the particular: the right side, its return, the top of
/// it.</summary>
/// <remarks>Up to eight words, a byte each, the first lowest. Names are compared as one number; their text is made for answers
/// only.</remarks>
public readonly record struct EdgeName
{
    private const int MostWords = 8;
    private const int BitsOfWord = 8;

    private static readonly string[] Words =
    [
        .. Enum.GetValues<EdgeWord>()
            .Select(word =>
                word switch
                {
                    EdgeWord.First => "1",
                    EdgeWord.Second => "2",
                    _ => word.ToString().ToLowerInvariant(),
                }
            ),
    ];

    private readonly ulong _words;
    private readonly int _number;

    /// <summary>A name of one word.</summary>
    /// <param name="word">Not <see cref="EdgeWord.None"/>.</param>
    /// <param name="number">Its number, from 1, for a word that has one; 0 for none.</param>
    public EdgeName(EdgeWord word, int number = 0) => (_words, _number) = ((ulong)word, number);

    private EdgeName(ulong words, int number) => (_words, _number) = (words, number);

    /// <summary>The front.</summary>
    public static EdgeName Front { get; } = new(EdgeWord.Front);

    /// <summary>The right side.</summary>
    public static EdgeName Right { get; } = new(EdgeWord.Right);

    /// <summary>The back.</summary>
    public static EdgeName Back { get; } = new(EdgeWord.Back);

    /// <summary>The left side.</summary>
    public static EdgeName Left { get; } = new(EdgeWord.Left);

    /// <summary>The start of a strip.</summary>
    public static EdgeName Start { get; } = new(EdgeWord.Start);

    /// <summary>The end of a strip.</summary>
    public static EdgeName End { get; } = new(EdgeWord.End);

    /// <summary>The upper edge of a panel as it lies.</summary>
    public static EdgeName Upper { get; } = new(EdgeWord.Upper);

    /// <summary>The lower edge of a panel as it lies.</summary>
    public static EdgeName Lower { get; } = new(EdgeWord.Lower);

    /// <summary>The edge nearer to the body.</summary>
    public static EdgeName Inner { get; } = new(EdgeWord.Inner);

    /// <summary>The edge away from the body.</summary>
    public static EdgeName Outer { get; } = new(EdgeWord.Outer);

    /// <summary>The round edge of a sector.</summary>
    public static EdgeName Rim { get; } = new(EdgeWord.Rim);

    /// <summary>Its number, from 1; 0 for none.</summary>
    public int Number => _number;

    /// <summary>Whether it names no edge.</summary>
    public bool IsNone => _words == 0;

    /// <summary>Its first and most general word.</summary>
    public EdgeWord First => (EdgeWord)(_words & byte.MaxValue);

    /// <summary>Its last and most particular word.</summary>
    public EdgeWord Last
    {
        get
        {
            ulong words = _words;
            while (words >> BitsOfWord != 0)
            {
                words >>= BitsOfWord;
            }

            return (EdgeWord)words;
        }
    }

    /// <summary>A word by its place, from 0; none beyond the last.</summary>
    public EdgeWord At(int place) => place < MostWords ? (EdgeWord)(byte)(_words >> (place * BitsOfWord)) : EdgeWord.None;

    /// <summary>The name with a more particular word.</summary>
    /// <exception cref="InvalidOperationException">It has eight words already.</exception>
    public EdgeName With(EdgeWord word)
    {
        for (var i = 0; i < MostWords; i++)
        {
            if (_words >> (i * BitsOfWord) == 0)
            {
                return new EdgeName(_words | ((ulong)word << (i * BitsOfWord)), _number);
            }
        }

        throw new InvalidOperationException($"{this} has no room for another word.");
    }

    /// <summary>This name, and then the words of another.</summary>
    public EdgeName With(EdgeName other)
    {
        EdgeName name = this;
        for (ulong words = other._words; words != 0; words >>= BitsOfWord)
        {
            name = name.With((EdgeWord)(words & byte.MaxValue));
        }

        return name;
    }

    /// <summary>The words with dashes between, a number behind the first: "side-3-top".</summary>
    public override string ToString()
    {
        if (_number == 0 && _words <= byte.MaxValue)
        {
            return Words[_words];
        }

        string text = Words[_words & byte.MaxValue];
        if (_number > 0)
        {
            text = $"{text}-{_number}";
        }

        for (ulong words = _words >> BitsOfWord; words != 0; words >>= BitsOfWord)
        {
            text = $"{text}-{Words[words & byte.MaxValue]}";
        }

        return text;
    }
}
