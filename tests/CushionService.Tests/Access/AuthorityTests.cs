using System.Net;
using System.Security.Cryptography;
using CushionService.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.IdentityModel.JsonWebTokens;
using Microsoft.IdentityModel.Tokens;

namespace CushionService.Tests.Access;

/// <summary>An authority that is away or hangs, configurations that are wrong, and what a caller with a wrong key hears.</summary>
public sealed class AuthorityTests : IDisposable
{
    private const string Authority = "https://authority.example";

    private readonly RSA _rsa = RSA.Create(2048);
    private readonly SwitchedAuthority _authority;

    public AuthorityTests() => _authority = new SwitchedAuthority(_rsa);

    [Theory]
    [InlineData(Mood.Away)]
    [InlineData(Mood.Hangs)]
    [InlineData(Mood.Nonsense)]
    public async Task Before_the_authority_has_answered_a_token_is_neither_right_nor_wrong(Mood mood)
    {
        _authority.Mood = mood;
        using RunningService service = Serve();
        using HttpResponseMessage response = await SendAsync(service, Token()).WaitAsync(TimeSpan.FromSeconds(15));
        (StatusCode code, Metadata trailers) = await Callers.StatusAsync(
            service.Calls.EstimateYardageAsync(new() { Order = Callers.PillowMessage }, [new("authorization", "Bearer " + Token())])
        );

        Assert.Equal(HttpStatusCode.ServiceUnavailable, response.StatusCode);
        Assert.Equal("5", response.Headers.GetValues("Retry-After").Single());
        Assert.Equal("authority-away", (await response.ProblemAsync())["code"]!.GetValue<string>());
        Assert.Equal(StatusCode.Unavailable, code);
        Assert.NotEmpty(trailers);

        _authority.Mood = Mood.Well;
        for (int wait = 0; wait < 100; wait++)
        {
            using HttpResponseMessage later = await SendAsync(service, Token());
            if (later.StatusCode == HttpStatusCode.OK)
            {
                return;
            }

            await Task.Delay(200);
        }

        Assert.Fail("The authority was not asked again.");
    }

    [Fact]
    public async Task Keys_are_kept_while_the_authority_is_away()
    {
        using RunningService service = Serve();
        using HttpResponseMessage first = await SendAsync(service, Token());
        _authority.Mood = Mood.Away;
        using HttpResponseMessage second = await SendAsync(service, Token());
        using HttpResponseMessage wrong = await SendAsync(service, Token()[..^8] + "AAAAAAAA");

        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.Equal(HttpStatusCode.OK, second.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, wrong.StatusCode);
    }

    [Theory]
    [InlineData(Mood.NoKeys)]
    [InlineData(Mood.OtherName)]
    public async Task Keys_are_kept_while_something_else_answers_for_the_authority(Mood mood)
    {
        using RunningService service = Serve();
        using RSA newer = RSA.Create(2048);
        using HttpResponseMessage first = await SendAsync(service, Token());
        _authority.Mood = mood;
        // A token with a new key has the authority asked again, five seconds after the last time; then nobody can tell whether it is right.
        HttpStatusCode unknown = HttpStatusCode.Unauthorized;
        for (int wait = 0; wait < 30 && unknown == HttpStatusCode.Unauthorized; wait++)
        {
            await Task.Delay(1_000);
            using HttpResponseMessage response = await SendAsync(service, Token(newer, "2"));
            unknown = response.StatusCode;
        }

        using HttpResponseMessage second = await SendAsync(service, Token());

        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, unknown);
        Assert.Equal(HttpStatusCode.OK, second.StatusCode);
    }

    [Theory]
    [InlineData("Access:Tokens:Authority", "http://authority.example", "https")]
    [InlineData("Access:Tokens:Authority", "authority", "address of the issuer")]
    [InlineData("Access:Tokens:Authority", "https://authority.example", "Audience")]
    [InlineData("Access:Origins:0", "shop.example", "Access:Origins")]
    [InlineData("Access:Origins:0", "https://shop.example/page", "Access:Origins")]
    [InlineData("Access:Proxies:0", "10.0.0.0/40", "Access:Proxies")]
    [InlineData("Access:Proxies", "10.0.0.0/8", "Access:Proxies is a list, also of one: its first entry is Access:Proxies:0")]
    [InlineData("Access:Keys", "abc", "Access:Keys is a list")]
    [InlineData("Access:Keys:0", "abc", "Access:Keys:0 is a group")]
    [InlineData("Access:Keys:shop:Name", "shop", "Access:Keys:shop: the entries of a list are numbered")]
    [InlineData("Access:Key:0:Name", "shop", "Access:Key: there is no such setting")]
    [InlineData("Access:Tokens", "https://authority.example", "Access:Tokens is a group")]
    [InlineData("Access:Tokens:Audience", "cushionservice", "Access:Tokens:Authority is required")]
    [InlineData("Access:Anonymous:Scopes", "estimate", "Access:Anonymous:Scopes is a list")]
    [InlineData("Access:Anonymous:Rate:0", "1", "Access:Anonymous:Rate is one value")]
    [InlineData("Access:Anonymous:Rate", "0", "Access:Anonymous:Rate")]
    [InlineData("Access:Anonymous:Effort", "overnight", "Access:Anonymous:Effort")]
    [InlineData("Admission:Workers", "0", "Workers")]
    [InlineData("Admission:StreamShare", "2", "StreamShare")]
    [InlineData("Admission:RetryAfterSeconds", "0", "RetryAfterSeconds")]
    [InlineData("Lifetime:NoticeSeconds", "-5", "NoticeSeconds")]
    [InlineData("Lifetime:ShutdownSeconds", "-1", "ShutdownSeconds")]
    [InlineData("Lifetime:GrpcConnectionAgeSeconds", "-1", "GrpcConnectionAgeSeconds")]
    [InlineData("Lifetime:Connections", "0", "Connections")]
    public void A_wrong_configuration_stops_the_start(string key, string value, string expected)
    {
        using WebApplicationFactory<Program> host = new WebApplicationFactory<Program>().WithWebHostBuilder(builder =>
            builder.UseSetting(key, value)
        );

        Assert.Contains(expected, Assert.ThrowsAny<Exception>(() => host.Services).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_rejection_says_what_was_wrong_as_RFC_6750_has_it()
    {
        string key = Callers.NewKey();
        using RunningService service = new(_ => { }, false, Callers.Settings(0, "page", key, "estimate"));
        using HttpResponseMessage none = await service.SendAsync("quotes", null);
        using HttpResponseMessage wrong = await service.SendAsync("quotes", "a made-up key");
        using HttpResponseMessage narrow = await service.SendAsync("quotes", key);

        Assert.Equal("Bearer realm=\"cushionservice\"", none.Headers.WwwAuthenticate.Single().ToString());
        Assert.Contains("error=\"invalid_token\"", wrong.Headers.WwwAuthenticate.Single().ToString(), StringComparison.Ordinal);
        string told = narrow.Headers.WwwAuthenticate.Single().ToString();
        Assert.Equal(HttpStatusCode.Forbidden, narrow.StatusCode);
        Assert.Contains("error=\"insufficient_scope\"", told, StringComparison.Ordinal);
        Assert.Contains("scope=\"quote\"", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_address_that_guesses_is_barred_and_its_neighbours_may_still_call()
    {
        string key = Callers.NewKey();
        using RunningService service = new(
            _ => { },
            false,
            [.. Callers.Settings(0, "page", key, "estimate"), ("Admission:RetryAfterSeconds", "30")]
        );
        List<HttpStatusCode> statuses = [];
        for (int guess = 0; guess < 40; guess++)
        {
            using HttpResponseMessage response = await service.SendAsync("yardage", Callers.NewKey());
            statuses.Add(response.StatusCode);
            if (response.StatusCode == HttpStatusCode.TooManyRequests)
            {
                Assert.Equal("30", response.Headers.GetValues("Retry-After").Single());
            }
        }

        using HttpResponseMessage open = await service.SendAsync("yardage", null);
        using HttpResponseMessage valid = await service.SendAsync("yardage", key);

        Assert.All(statuses.Take(20), status => Assert.Equal(HttpStatusCode.Unauthorized, status));
        Assert.Contains(HttpStatusCode.TooManyRequests, statuses);
        Assert.Equal(HttpStatusCode.OK, open.StatusCode);
        Assert.Equal(HttpStatusCode.OK, valid.StatusCode);
    }

    public void Dispose()
    {
        _authority.Dispose();
        _rsa.Dispose();
    }

    private RunningService Serve() =>
        new(
            services => services.AddHttpClient(AuthorityKeys.Client).ConfigurePrimaryHttpMessageHandler(() => _authority),
            false,
            ("Access:Tokens:Authority", Authority),
            ("Access:Tokens:Audience", "cushionservice")
        );

    private static async Task<HttpResponseMessage> SendAsync(RunningService service, string token)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("/v1/yardage", UriKind.Relative))
        {
            Content = new StringContent(Callers.Pillow, System.Text.Encoding.UTF8, "application/json"),
            Headers = { Authorization = new("Bearer", token) },
        };
        return await service.Http.SendAsync(request);
    }

    private string Token() => Token(_rsa, "1");

    private static string Token(RSA rsa, string key) =>
        new JsonWebTokenHandler().CreateToken(
            new SecurityTokenDescriptor
            {
                Audience = "cushionservice",
                Issuer = Authority,
                Expires = DateTime.UtcNow.AddMinutes(5),
                Claims = new Dictionary<string, object> { ["scope"] = "estimate", ["client_id"] = "shop" },
                SigningCredentials = new SigningCredentials(new RsaSecurityKey(rsa) { KeyId = key }, SecurityAlgorithms.RsaSha256),
            }
        );

    public enum Mood
    {
        Well,
        Away,
        Hangs,
        Nonsense,
        NoKeys,
        OtherName,
    }

    // An authority that says what it is when it says anything.
    private sealed class SwitchedAuthority(RSA rsa) : HttpMessageHandler
    {
        public Mood Mood { get; set; }

        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            switch (Mood)
            {
                case Mood.Away:
                    throw new HttpRequestException("Connection refused.");
                case Mood.Hangs:
                    await Task.Delay(Timeout.Infinite, cancellationToken);
                    break;
                case Mood.Nonsense:
                    return new HttpResponseMessage(HttpStatusCode.OK) { Content = new StringContent("<html></html>") };
            }

            return Mood == Mood.NoKeys && request.RequestUri!.AbsolutePath.EndsWith("keys", StringComparison.Ordinal)
                ? new HttpResponseMessage(HttpStatusCode.OK) { Content = new StringContent("""{"keys":[]}""") }
                : AuthorityDocuments.Answer(request, Mood == Mood.OtherName ? "https://other.example" : Authority, rsa);
        }
    }
}
