namespace CushionService.Engine.Patterns.Panels;

/// <summary>A pattern breaks an invariant of its own: only a fault in the engine can cause it.</summary>
/// <param name="message">The invariant, and where it is broken.</param>
public sealed class InvalidPatternException(string message) : Exception(message);
