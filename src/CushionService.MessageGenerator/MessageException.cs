namespace CushionService.MessageGenerator;

/// <summary>What is wrong with one message of a resource file.</summary>
public sealed class MessageException(string reason) : Exception(reason);
