namespace CushionService.MessageGenerator;

/// <summary>What is wrong with one message of a resource file.</summary>
/// <param name="reason">Continues the sentence that begins with the file and the key, in English: developers read
/// it.</param>
public sealed class MessageException(string reason) : Exception(reason);
