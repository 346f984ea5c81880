using System.Globalization;
using System.Threading.RateLimiting;

namespace ProcessorDesk.Web.Bench;

/// <summary>How many requests one address may make of the bench, so that nobody's loop takes the shop's desk away from it.</summary>
/// <param name="AtOnce">In a burst.</param>
/// <param name="Again">So many more may be made each time that <paramref name="Every"/> has passed.</param>
public sealed record BenchRate(int AtOnce, int Again, TimeSpan Every)
{
    public const string Policy = "bench";

    /// <summary>Five hundred a second, well above the hundred that are promised.</summary>
    private static readonly BenchRate s_usual = new(1000, 50, TimeSpan.FromMilliseconds(100));

    public static void Add(IServiceCollection services)
    {
        services.AddSingleton(s_usual);
        services.AddRateLimiter(options =>
        {
            options.AddPolicy(Policy, context => context.RequestServices.GetRequiredService<BenchRate>().Of(context));
            options.OnRejected = (rejected, cancelled) => Refuse(rejected.HttpContext, rejected.Lease, cancelled);
        });
    }

    private RateLimitPartition<string> Of(HttpContext context) =>
        RateLimitPartition.GetTokenBucketLimiter(context.Connection.RemoteIpAddress?.ToString() ?? "", _ => new TokenBucketRateLimiterOptions
        {
            TokenLimit = AtOnce,
            TokensPerPeriod = Again,
            ReplenishmentPeriod = Every,
        });

    private static async ValueTask Refuse(HttpContext context, RateLimitLease lease, CancellationToken cancelled)
    {
        var wait = lease.TryGetMetadata(MetadataName.RetryAfter, out var after) ? (int)Math.Ceiling(after.TotalSeconds) : 1;
        context.Response.StatusCode = StatusCodes.Status429TooManyRequests;
        context.Response.Headers.RetryAfter = Math.Max(1, wait).ToString(CultureInfo.InvariantCulture);
        // A page is left to the shell, which says every silent refusal in words.
        if (!BenchJson.IsWanted(context.Request))
            return;
        context.Response.ContentType = BenchJson.Problem;
        await context.Response.WriteAsync(
            BenchJson.Write(StatusCodes.Status429TooManyRequests, BenchJson.TooMany, "Too many requests", "Wait a second and ask again.", new Dictionary<string, List<string>>()), cancelled);
    }
}
