using System.Net;
using System.Security.Cryptography;
using CushionService.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.IdentityModel.JsonWebTokens;
using Microsoft.IdentityModel.Tokens;

namespace CushionService.Tests.Access;

/// <summary>Tokens of the authority open what their scopes say; all other tokens open nothing.</summary>
public sealed class TokenTests : IDisposable
{
    private const string Authority = "https://authority.example";
    private const string Audience = "cushionservice";

    private readonly RSA _rsa = RSA.Create(2048),
        _other = RSA.Create(2048);
    private readonly RunningService _service;

    public TokenTests() =>
        _service = new(
            services => services.AddHttpClient(AuthorityKeys.Client).ConfigurePrimaryHttpMessageHandler(() => new Discovery(_rsa)),
            false,
            ("Access:Tokens:Authority", Authority),
            ("Access:Tokens:Audience", Audience)
        );

    [Fact]
    public async Task A_token_opens_what_its_scopes_say()
    {
        Assert.Equal((HttpStatusCode.OK, StatusCode.OK), await QuoteAsync(Token()));
        Assert.Equal((HttpStatusCode.Forbidden, StatusCode.PermissionDenied), await QuoteAsync(Token(scope: "estimate openid")));
    }

    [Fact]
    public async Task Every_other_token_opens_nothing()
    {
        (HttpStatusCode, StatusCode) nothing = (HttpStatusCode.Unauthorized, StatusCode.Unauthenticated);

        Assert.Equal(nothing, await QuoteAsync(Token(audience: "another service")));
        Assert.Equal(nothing, await QuoteAsync(Token(issuer: "https://elsewhere.example")));
        Assert.Equal(nothing, await QuoteAsync(Token(ends: TimeSpan.FromMinutes(-5))));
        Assert.Equal(nothing, await QuoteAsync(Token(key: new RsaSecurityKey(_other) { KeyId = "1" })));
        Assert.Equal(nothing, await QuoteAsync(Token(client: null)));
        Assert.Equal(nothing, await QuoteAsync("not.a.token"));
        // Without a signature ("alg": "none", RFC 8725, section 3.1).
        string[] parts = Token().Split('.');
        Assert.Equal(nothing, await QuoteAsync($"{Base64UrlEncoder.Encode("""{"alg":"none","typ":"JWT"}""")}.{parts[1]}."));
    }

    public void Dispose()
    {
        _service.Dispose();
        _rsa.Dispose();
        _other.Dispose();
    }

    private async Task<(HttpStatusCode Http, StatusCode Grpc)> QuoteAsync(string token)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("/v1/quotes", UriKind.Relative))
        {
            Content = new StringContent(Callers.Pillow, System.Text.Encoding.UTF8, "application/json"),
            Headers = { Authorization = new("Bearer", token) },
        };
        using HttpResponseMessage response = await _service.Http.SendAsync(request);
        Metadata headers = [new Metadata.Entry("authorization", "Bearer " + token)];
        return (
            response.StatusCode,
            (await Callers.StatusAsync(_service.Calls.QuoteAsync(new() { Order = Callers.PillowMessage }, headers))).Code
        );
    }

    private string Token(
        string audience = Audience,
        string issuer = Authority,
        string scope = "quote estimate",
        string? client = "order system",
        TimeSpan? ends = null,
        SecurityKey? key = null
    )
    {
        Dictionary<string, object> claims = new() { ["scope"] = scope };
        if (client is not null)
        {
            claims["client_id"] = client;
        }

        DateTime end = DateTime.UtcNow + (ends ?? TimeSpan.FromMinutes(5));
        return new JsonWebTokenHandler().CreateToken(
            new SecurityTokenDescriptor
            {
                Audience = audience,
                Issuer = issuer,
                IssuedAt = end.AddHours(-1),
                NotBefore = end.AddHours(-1),
                Expires = end,
                Claims = claims,
                SigningCredentials = new SigningCredentials(key ?? new RsaSecurityKey(_rsa) { KeyId = "1" }, SecurityAlgorithms.RsaSha256),
            }
        );
    }

    private sealed class Discovery(RSA rsa) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(AuthorityDocuments.Answer(request, Authority, rsa));
    }
}
