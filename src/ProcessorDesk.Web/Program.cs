using ProcessorDesk.Web;
using ProcessorDesk.Web.Hosting;

var builder = WebApplication.CreateBuilder(Switches.Spelled(args));
builder.WebHost.UseStaticWebAssets();
builder.AddShop();
builder.Services.AddShell();

var app = builder.Build();
if (!app.PrepareShop())
    return 1;
app.UseShell();
app.MapGet("/healthz", Health.Answer).AllowAnonymous();
app.MapGet(AddressTrial.Path + "{question}", (string question, AddressTrial trial) => trial.Answer(question)).AllowAnonymous();
app.AnnounceWhenStarted();
app.Run();
return 0;
