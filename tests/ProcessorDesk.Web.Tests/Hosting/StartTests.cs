using System.Net;
using Xunit;

namespace ProcessorDesk.Web.Tests.Hosting;

public sealed class StartTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("processor-desk-start-").FullName;

    [Fact]
    public async Task A_new_shop_says_where_to_open_it_and_the_first_managers_code_and_then_answers()
    {
        using var desk = new RunningDesk("--data", _folder, "--urls", "http://0.0.0.0:0");

        var here = await desk.Says(@"Open on this PC: +(http://localhost:\d+)$");
        await desk.Says(@"On a tablet: +http://\S+:\d+$");
        await desk.Says(@"First manager's one-time code: +[A-Z2-9]{10}$");

        using var client = new HttpClient();
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(new Uri(here.Groups[1].Value + "/healthz"))).StatusCode);
        Assert.True(File.Exists(Path.Combine(_folder, "processor-desk.db")));
    }

    [Fact]
    public async Task An_address_of_this_machine_alone_says_that_a_tablet_cannot_reach_it()
    {
        using var desk = new RunningDesk("--data", _folder, "--urls", "http://127.0.0.1:0");

        await desk.Says(@"On a tablet: +not reachable; start with --urls http://0\.0\.0\.0:\d+$");
    }

    [Fact]
    public async Task The_demo_fills_its_own_folder_and_names_no_code()
    {
        using var desk = new RunningDesk("--demo", "--data", _folder, "--urls", "http://127.0.0.1:0");

        var here = await desk.Says(@"Open on this PC: +http://localhost:(\d+)$");

        using var client = new HttpClient();
        var door = await client.GetStringAsync(new Uri($"http://127.0.0.1:{here.Groups[1].Value}/Door"));
        Assert.Contains("demo", door, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("one-time code", desk.Console, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_demo_refuses_a_folder_that_holds_a_real_shop_and_changes_nothing_in_it()
    {
        using (var shop = new RunningDesk("--data", _folder, "--urls", "http://127.0.0.1:0"))
            await shop.Says("Open on this PC");
        var before = Names();

        using var demo = new RunningDesk("--demo", "--data", _folder, "--urls", "http://127.0.0.1:0");

        Assert.Equal(1, await demo.Ends());
        Assert.Contains("holds a real shop. The demo won't touch it", demo.Console, StringComparison.Ordinal);
        Assert.Equal(before, Names());
    }

    [Fact]
    public async Task A_folder_that_holds_the_demo_is_not_opened_as_a_shop()
    {
        using (var demo = new RunningDesk("--demo", "--data", _folder, "--urls", "http://127.0.0.1:0"))
            await demo.Says("Open on this PC");

        using var shop = new RunningDesk("--data", _folder, "--urls", "http://127.0.0.1:0");

        Assert.Equal(1, await shop.Ends());
        Assert.Contains("holds the demo. Start with --demo", shop.Console, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Starting_again_finds_the_shop_as_it_was()
    {
        using (var first = new RunningDesk("--data", _folder, "--urls", "http://127.0.0.1:0"))
            await first.Says("Open on this PC");

        using var second = new RunningDesk("--data", _folder, "--urls", "http://127.0.0.1:0");

        await second.Says("Open on this PC");
        Assert.DoesNotContain("upgraded", second.Console, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string[] Names() => [.. Directory.EnumerateFiles(_folder, "*.db").Select(Path.GetFileName).Order()!];
}
