namespace CushionService.Intake;

/// <summary>The rules of what a record holds.</summary>
internal static class Rules
{
    /// <summary>The rules of a part, where there is one.</summary>
    /// <param name="name">The property that holds it.</param>
    /// <param name="get">Gets it.</param>
    /// <param name="validator">Its rules.</param>
    public static Action<T, Findings> Part<T, TPart>(string name, Func<T, TPart?> get, RecordValidator<TPart> validator)
        where TPart : class =>
        (instance, findings) =>
        {
            if (get(instance) is { } part)
            {
                validator.Run(part, findings.Within(name));
            }
        };

    /// <summary>The rules of each entry of a list, where there is one; gaps are left out.</summary>
    /// <param name="name">The property that holds the list.</param>
    /// <param name="get">Gets it.</param>
    /// <param name="validator">The rules of an entry.</param>
    public static Action<T, Findings> Entries<T, TEntry>(
        string name,
        Func<T, IReadOnlyList<TEntry?>?> get,
        RecordValidator<TEntry> validator
    )
        where TEntry : class =>
        (instance, findings) =>
        {
            IReadOnlyList<TEntry?>? entries = get(instance);
            for (int i = 0; i < entries?.Count; i++)
            {
                if (entries[i] is { } entry)
                {
                    validator.Run(entry, findings.Within(name, i));
                }
            }
        };
}
