using System.Globalization;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Browser.Tests.KitchenDay;

[assembly: HostingStartup(typeof(DayClockInTheProgram))]

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>
/// A clock that stands in a file: the program, a process of its own, and the test read the same time, and a program that is started again goes
/// on from it. It moves only when the test moves it.
/// </summary>
public sealed class DayClock(string file) : TimeProvider
{
    /// <summary>Where the program finds the clock's file.</summary>
    public const string Variable = "DESK_DAY_CLOCK";

    public override DateTimeOffset GetUtcNow() => new(long.Parse(File.ReadAllText(file), CultureInfo.InvariantCulture), TimeSpan.Zero);

    public void Set(DateTimeOffset now)
    {
        // Moved over the old one at once: who reads meanwhile reads one of the two.
        var next = file + ".next";
        File.WriteAllText(next, now.UtcTicks.ToString(CultureInfo.InvariantCulture));
        File.Move(next, file, overwrite: true);
    }

    public void Pass(TimeSpan time) => Set(GetUtcNow() + time);

    public void PassMinutes(int minutes) => Pass(TimeSpan.FromMinutes(minutes));
}

/// <summary>Hands the program the clock in the file before it takes the system's.</summary>
public sealed class DayClockInTheProgram : IHostingStartup
{
    public void Configure(IWebHostBuilder builder) => builder.ConfigureServices(services =>
        services.AddSingleton<TimeProvider>(new DayClock(Environment.GetEnvironmentVariable(DayClock.Variable) ?? throw new InvalidOperationException($"{DayClock.Variable} names no clock."))));
}
