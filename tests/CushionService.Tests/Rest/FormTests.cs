using System.Net;
using System.Text;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Rest;

/// <summary>Faults of an order's form, each told with its place (RFC 6901) and all at once.</summary>
public sealed class FormTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("", " not-json")]
    [InlineData(" \n", " not-json")]
    [InlineData("{", " not-json")]
    [InlineData("{}}", " not-json")]
    [InlineData("{\"units\":NaN}", " not-json")]
    [InlineData("{\"units\":\"in\",}", " not-json")]
    [InlineData("{'units':'in'}", " not-json")]
    [InlineData("/* none */ {}", " not-json")]
    [InlineData("null", " wrong-type")]
    [InlineData("[]", " wrong-type")]
    [InlineData("\"order\"", " wrong-type")]
    [InlineData("{\"units\":1}", "/units wrong-type")]
    [InlineData(
        "{\"reference\":1,\"cushions\":[{\"quantity\":\"2\"},{\"quantity\":1.0}]}",
        "/reference wrong-type",
        "/cushions/0/quantity wrong-type",
        "/cushions/1/quantity wrong-type"
    )]
    [InlineData("{\"cushions\":{}}", "/cushions wrong-type")]
    [InlineData("{\"cushions\":[null,3]}", "/cushions/0 wrong-type", "/cushions/1 wrong-type")]
    [InlineData("{\"cushions\":[{\"thickness\":[2]}],\"unit/s\":1}", "/cushions/0/thickness wrong-type", "/unit~1s unknown-field")]
    [InlineData(
        "{\"pieces\":[{\"points\":[null,[1],[1,2,3],{\"x\":1},[true,2],[1,null],[1,2]]}]}",
        "/pieces/0/points/0 wrong-type",
        "/pieces/0/points/1 wrong-type",
        "/pieces/0/points/2 wrong-type",
        "/pieces/0/points/3 wrong-type",
        "/pieces/0/points/4/0 wrong-type",
        "/pieces/0/points/5/1 wrong-type"
    )]
    [InlineData("{\"reference\":\"\\ud800\"}", "/reference bad-encoding")]
    [InlineData("{\"workroom\":{\"threadRatio\":\"NaN\"}}", "/workroom/threadRatio wrong-type")]
    public async Task What_cannot_be_read_is_400(string order, params string[] expected)
    {
        using HttpResponseMessage response = await service.PostAsync("quotes", order);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal(expected, (await response.ProblemAsync()).Violations());
    }

    [Theory]
    [InlineData("{\"unit\":\"in\"}", "/unit unknown-field")]
    [InlineData("{\"Units\":\"in\"}", "/Units unknown-field")]
    [InlineData("{\"units\":\"in\",\"units\":\"cm\"}", "/units duplicate-field")]
    [InlineData("{\"units\":\"IN\"}", "/units unknown-value")]
    [InlineData("{\"effort\":\"quick, standard\"}", "/effort unknown-value")]
    [InlineData(
        "{\"cushions\":[{\"construction\":\"KnifeEdge\",\"fill\":{\"density\":1e999}}]}",
        "/cushions/0/construction unknown-value",
        "/cushions/0/fill/density not-finite"
    )]
    [InlineData("{\"cushions\":[{\"quantity\":99999999999}]}", "/cushions/0/quantity out-of-range")]
    [InlineData("{\"cushions\":[{\"edging\":{\"at\":[\"top\",\"side\"]}}]}", "/cushions/0/edging/at/1 unknown-value")]
    public async Task What_can_be_read_but_not_followed_is_422_with_the_rules_that_it_breaks_besides(string order, params string[] expected)
    {
        using HttpResponseMessage response = await service.PostAsync("quotes", order);
        string[] violations = (await response.ProblemAsync()).Violations();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Equal(expected, violations.Take(expected.Length));
        Assert.True(violations.Length > expected.Length, "The order lacks its fabric, which should be told too.");
        Assert.Equal(violations.Length, violations.Select(violation => violation.Split(' ')[0]).Distinct().Count());
    }

    [Theory]
    [InlineData("{\"workroom\":{\"threadRatio\":1e300}}", "/workroom/threadRatio out-of-range")]
    [InlineData("{\"workroom\":{\"threadWaste\":-1e300}}", "/workroom/threadWaste out-of-range")]
    [InlineData("{\"stocks\":[{\"density\":1e300}]}", "/stocks/0/density out-of-range")]
    [InlineData(
        "{\"cushions\":[{\"construction\":\"boxed\",\"fill\":{\"kind\":\"foam\",\"density\":1e300}}]}",
        "/cushions/0/fill/density out-of-range"
    )]
    [InlineData(
        "{\"cushions\":[{\"construction\":\"boxed\",\"channels\":{\"count\":2,\"takeUp\":1e300}}]}",
        "/cushions/0/channels/takeUp out-of-range"
    )]
    [InlineData(
        "{\"cushions\":[{\"construction\":\"boxed\",\"edging\":{\"kind\":\"ruffle\",\"depth\":3,\"fullness\":1e300}}]}",
        "/cushions/0/edging/fullness out-of-range"
    )]
    public async Task A_number_beyond_every_range_is_told_and_not_choked_on(string order, string expected)
    {
        using HttpResponseMessage response = await service.PostAsync("quotes", order);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Contains(expected, (await response.ProblemAsync()).Violations());
    }

    [Theory]
    [InlineData(32, "wrong-type")]
    [InlineData(33, "too-deep")]
    [InlineData(200_000, "too-deep")]
    public async Task Nesting_ends_at_32(int depth, string expected)
    {
        using HttpResponseMessage response = await service.PostAsync("quotes", new string('[', depth) + new string(']', depth));

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal([$" {expected}"], (await response.ProblemAsync()).Violations());
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("utf-32")]
    [InlineData("latin1")]
    public async Task Another_encoding_is_told_as_such(string encoding)
    {
        byte[] body = Encoding.GetEncoding(encoding).GetBytes("{\"reference\":\"Lesenische für Öykü\"}");
        using HttpResponseMessage response = await service.PostAsync("quotes", body);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal([" bad-encoding"], (await response.ProblemAsync()).Violations());
    }

    [Fact]
    public async Task A_validation_of_a_readable_order_is_200_with_the_faults_of_its_form()
    {
        using HttpResponseMessage response = await service.PostAsync("validations", "{\"unit\":\"in\"}");

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        var answer = await response.JsonAsync();
        Assert.False(answer["valid"]!.GetValue<bool>());
        Assert.Equal("/unit unknown-field", answer.Violations()[0]);
    }

    [Fact]
    public async Task Faults_are_told_up_to_a_thousand()
    {
        string order = "{" + string.Join(',', Enumerable.Range(0, 5000).Select(i => $"\"x{i}\":{i}")) + ",\"units\":1}";
        using HttpResponseMessage response = await service.PostAsync("quotes", order);

        Assert.Equal(1000, (await response.ProblemAsync()).Violations().Length);
    }
}
