using System.Collections.Concurrent;
using System.Net;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Safety;

/// <summary>What a person sees when the desk itself fails: here the shop's settings can't be read once the test says so.</summary>
public sealed class FaultTests(FaultTests.FailingShop shop) : IClassFixture<FaultTests.FailingShop>
{
    [Fact]
    public async Task A_fault_shows_a_reference_that_the_log_has_too_and_nothing_of_its_inside()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await shop.While(() => desk.Open("/Me"));

        var reference = page.Document.QuerySelector(".reference")!.TextContent;
        Assert.Equal(HttpStatusCode.InternalServerError, page.Status);
        Assert.Equal("Something went wrong", page.Heading);
        Assert.Matches("^[A-Z0-9]{6}$", reference);
        Assert.Contains(shop.Log, line => line.Contains($"Fault {reference} at GET /Me", StringComparison.Ordinal));
        Assert.DoesNotContain("settings are gone", page.Document.DocumentElement.OuterHtml, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_that_met_a_fault_is_kept_on_the_page_and_can_be_sent_again()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Office");
        var open = await desk.Open("/Me");

        var fault = await shop.While(() => open.Send("Move here", ("Input.Station", "Pickup")));
        var saved = await fault.Press("Send it again");

        Assert.Equal(HttpStatusCode.InternalServerError, fault.Status);
        fault.Expect("What you typed", "Station Pickup");
        saved.Expect("This screen is now at Pickup.");
    }

    [Fact]
    public async Task Who_is_not_signed_in_meets_the_same_page()
    {
        using var desk = shop.Stranger();

        var page = await shop.While(() => desk.Open("/Door"));

        Assert.Equal((HttpStatusCode.InternalServerError, "Something went wrong"), (page.Status, page.Heading));
        var reference = page.Document.QuerySelector(".reference")!.TextContent;
        Assert.Contains(shop.Log, line => line.Contains($"Fault {reference} at GET /Door", StringComparison.Ordinal));
    }

    public sealed class FailingShop : ShopUnderTest, ILoggerProvider, ILogger
    {
        private volatile bool _fails;

        public ConcurrentQueue<string> Log { get; } = new();

        public async Task<Screen> While(Func<Task<Screen>> act)
        {
            _fails = true;
            try
            {
                return await act();
            }
            finally
            {
                _fails = false;
            }
        }

        public ILogger CreateLogger(string categoryName) => this;

        IDisposable? ILogger.BeginScope<TState>(TState state) => null;

        bool ILogger.IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Error;

        void ILogger.Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            Log.Enqueue(formatter(state, exception));

        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureTestServices(services =>
            {
                services.AddSingleton<ILoggerProvider>(this);
                services.AddScoped(inside => _fails
                    ? throw new InvalidOperationException("The settings are gone.")
                    : ActivatorUtilities.CreateInstance<ShopDay>(inside));
            });
        }
    }
}
