using CushionService.Rest;
using Microsoft.AspNetCore.Http;

namespace CushionService.Tests.Rest;

/// <summary>A call that is deprecated says so, and until when it is answered (RFC 9745, RFC 8594).</summary>
public sealed class DeprecationTests
{
    [Fact]
    public void The_headers_name_both_days()
    {
        DefaultHttpContext http = new();
        new Deprecation(new DateOnly(2027, 3, 1), new DateOnly(2028, 3, 1)).Write(http.Response);
        Assert.Equal("@1803859200", http.Response.Headers["Deprecation"].ToString());
        Assert.Equal("Wed, 01 Mar 2028 00:00:00 GMT", http.Response.Headers["Sunset"].ToString());
        Assert.Contains("rel=\"deprecation\"", http.Response.Headers["Link"].ToString(), StringComparison.Ordinal);
    }
}
