using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of what a record holds.</summary>
internal static class Rules
{
    /// <summary>The rules of a part, where there is one.</summary>
    /// <param name="name">The property that holds it.</param>
    /// <param name="get">Gets it.</param>
    /// <param name="validator">Its rules.</param>
    public static Action<T, ValidationContext<T>> Part<T, TPart>(string name, Func<T, TPart?> get, RecordValidator<TPart> validator)
        where TPart : class => (instance, context) =>
    {
        if (get(instance) is { } part)
        {
            ValidationContext<TPart> within = context.CloneForChildValidator(part);
            within.PropertyChain.Add(name);
            validator.Run(part, within);
        }
    };

    /// <summary>The rules of each entry of a list, where there is one; gaps are left out.</summary>
    /// <param name="name">The property that holds the list.</param>
    /// <param name="get">Gets it.</param>
    /// <param name="validator">The rules of an entry.</param>
    public static Action<T, ValidationContext<T>> Entries<T, TEntry>(string name, Func<T, IReadOnlyList<TEntry?>?> get, RecordValidator<TEntry> validator)
        where TEntry : class => (instance, context) =>
    {
        IReadOnlyList<TEntry?>? entries = get(instance);
        for (int i = 0; i < entries?.Count; i++)
        {
            if (entries[i] is { } entry)
            {
                ValidationContext<TEntry> within = context.CloneForChildValidator(entry);
                within.PropertyChain.Add(name);
                within.PropertyChain.AddIndexer(i);
                validator.Run(entry, within);
            }
        }
    };
}
