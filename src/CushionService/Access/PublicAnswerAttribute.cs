namespace CushionService.Access;

/// <summary>Marks a call whose answer is the same for every caller, so that caches may keep it.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class PublicAnswerAttribute : Attribute;
