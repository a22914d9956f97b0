using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Rejections;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Lists the codes, from their register, where a record has one. More codes may come within a version, so that the
/// enumeration is an open one: the member stays a string, and <c>x-extensible-enum</c> has the words.</summary>
internal sealed class CodeSchemas : ISchemaFilter
{
    private const string Member = "code";

    /// <summary>Adds the codes to a record that has one.</summary>
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        CodeUse uses =
            context.Type == typeof(ViolationAnswer) ? CodeUse.Violation | CodeUse.Warning
            : context.Type == typeof(CautionAnswer) ? CodeUse.Caution
            : context.Type == typeof(Problem) ? CodeUse.Problem
            : 0;
        // A filter also runs for each member that is of the record's type: only the record itself is described.
        if (uses == 0 || context.MemberInfo is not null || schema.Properties?[Member] is not OpenApiSchema member)
        {
            return;
        }

        MessageWriter words = new(Language.English, LengthUnit.Inch);
        Code[] codes = [.. CodeRegister.For(uses)];
        IEnumerable<string> lines = codes.Select(code => $"- `{code.Name}`: {words.Text(code.Meaning)}");
        member.Description +=
            $" More may come; `GET {ProblemAddress.Path}/{{code}}` explains each. Known now:\n\n" + string.Join('\n', lines);
        member.AddExtension("x-extensible-enum", new JsonNodeExtension(new JsonArray([.. codes.Select(code => (JsonNode)code.Name)])));
    }
}
